import { Failure, type BottlePlan, type HerbLine, type PlantState, type PreparationLine } from "../../../api";
import { MILLILITRES } from "../../../format/amount";
import { words } from "../../../words";
import { Form, PlainEntry, VolumeEntry } from "../../../state/form.svelte";
import type { Session } from "../../../state/session";

/** Bottles that are wanted by a day, while they are being said and worked back. */
export class WishDraft {
  readonly form = new Form();
  herb = $state.raw<HerbLine | null>(null);
  part = $state("");
  preparation = $state("");
  wantedState = $state<PlantState | "">("");
  readyOn = $state("");
  gifts = $state(false);
  /** The maker's deliberate yes to what the list of poisonous plants asks. */
  confirmed = $state(false);
  readonly bottles = new PlainEntry("", 6);
  readonly size: VolumeEntry;
  readonly yearly: VolumeEntry;
  preparations = $state.raw<PreparationLine[]>([]);
  private worked = $state.raw<{ plan: BottlePlan; wish: string } | null>(null);

  constructor(private readonly session: Session) {
    this.size = new VolumeEntry(session.units, session.units === "us" ? 2 * MILLILITRES["fl oz"] : 60);
    this.yearly = new VolumeEntry(session.units);
  }

  async open(): Promise<void> {
    try {
      const { preparations } = await this.session.desk.ask("preparation.list", {});
      this.preparations = preparations.filter((one) => one.fresh || one.dried);
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      this.form.failures = [thrown];
    }
  }

  /** Whether there is something to say yes to, or was. */
  get asks(): boolean {
    return this.confirmed || this.form.failures.some(({ code }) => code === "confirm_plant");
  }

  choose(herb: HerbLine | null): void {
    this.confirmed = false;
    this.herb = herb;
    this.part = herb?.parts.length === 1 ? (herb.parts[0] ?? "") : "";
  }

  get chosen(): PreparationLine | undefined {
    return this.preparations.find((one) => one.key === this.preparation);
  }

  /** Fresh or dried where the preparation leaves it open, else what it takes. */
  get state(): PlantState | "" {
    const one = this.chosen;
    if (!one) return "";
    if (one.fresh && one.dried) return this.wantedState;
    return one.fresh ? "fresh" : "dried";
  }

  get wrong(): Failure[] {
    const w = words.plan;
    const missing = (is: boolean, field: string, message: string) => (is ? [] : [new Failure("missing", field, message)]);
    return [
      ...missing(this.herb !== null, "herb", w.herbMissing),
      ...missing(!this.herb || this.part !== "", "part", w.partMissing),
      ...missing(this.preparation !== "", "preparation", w.preparationMissing),
      ...missing(!this.chosen || this.state !== "", "state", words.failure.missing(w.state)),
      ...this.bottles.wrong("bottles", w.bottles, true),
      ...this.size.wrong("bottle_ml", w.size, true),
      ...missing(this.readyOn !== "", "ready_on", w.readyMissing),
      ...this.yearly.wrong("yearly_use_ml", w.yearlyUse, false),
    ];
  }

  /** What the wish comes to, as long as it is the wish that was worked back. */
  get plan(): BottlePlan | null {
    return this.worked?.wish === JSON.stringify(this.wish) ? this.worked.plan : null;
  }

  private get wish() {
    return {
      herb: this.herb?.key ?? "",
      part: this.part,
      preparation: this.preparation,
      state: this.state || "dried",
      bottles: Math.round(this.bottles.amount ?? 0),
      bottle_ml: this.size.amount ?? 0,
      ready_on: this.readyOn,
      gifts: this.gifts,
      ...(this.confirmed ? { confirmed: true } : {}),
    } as const;
  }

  async work(): Promise<void> {
    await this.form.send(async () => {
      const wish = this.wish;
      const yearly = this.yearly.empty ? {} : { yearly_use_ml: this.yearly.amount ?? 0 };
      this.worked = { plan: await this.session.plans.work({ ...wish, ...yearly }), wish: JSON.stringify(wish) };
    }, this.wrong);
  }

  async save(): Promise<void> {
    await this.form.send(async () => {
      await this.session.plans.save(this.wish);
      this.session.route.replace("/plan");
    }, this.wrong);
  }
}
