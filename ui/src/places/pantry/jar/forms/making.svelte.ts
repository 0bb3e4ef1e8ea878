import { Failure, type Composition, type Controls, type Proposal } from "../../../../api";
import { Form, VolumeEntry, type MassEntry } from "../../../../state/form.svelte";
import type { Session } from "../../../../state/session";

export type ControlName = keyof Controls;
/** How much of a plant goes in, and how much of it there is; null where no lot limits it. */
export type Amount = { mass: MassEntry; left_g: number | null };

/** One thing that a jar is made of, by the name it has on the shelf, and what is left of it. */
export type Supplied = { name: string; left: string; kind: "herb" | "liquid" };

/** A jar being worked out: what was moved, and what the core proposes for it. */
export abstract class Making {
  readonly form = new Form();
  readonly jar: VolumeEntry;
  moved = $state.raw<Partial<Record<ControlName, number>>>({});
  proposal = $state.raw<Proposal | null>(null);
  refusal = $state.raw<Failure | null>(null);
  /** Whether what it is made of stands open: the core waits for a figure of it. */
  opened = $state(false);
  private asking = false;
  private stale = false;

  constructor(protected readonly session: Session) {
    this.jar = new VolumeEntry(session.units);
  }

  /** What the core is asked about; null while too little of it is known. */
  abstract get composition(): Composition | null;

  /** The plants that can be taken more or less of. */
  abstract get amounts(): Amount[];

  /** What it is made of, in a row. */
  abstract get supplied(): Supplied[];

  /** How many times the present amounts the lots would reach for; null where no lot limits them. */
  get reachesFor(): number | null {
    const times = this.amounts.flatMap(({ left_g, mass }) => (left_g !== null && mass.amount ? [left_g / mass.amount] : []));
    return times.length > 0 ? Math.min(...times) : null;
  }

  /** Takes so many times the present amounts of every plant, but no more than there is; false where that was less. */
  scale(times: number): boolean {
    const most = this.reachesFor ?? times;
    const taken = Math.min(times, most);
    for (const { mass } of this.amounts) if (mass.amount) mass.set(mass.amount * taken);
    void this.recompose();
    return taken >= 0.999 * times;
  }

  move(control: ControlName, value: number): void {
    this.moved = { ...this.moved, [control]: value };
    void this.recompose();
  }

  /** Asks the core anew; while an answer is on its way only the newest question is kept. */
  async recompose(): Promise<void> {
    if (this.asking) {
      this.stale = true;
      return;
    }
    this.asking = true;
    do {
      this.stale = false;
      const composition = this.composition;
      try {
        this.proposal = composition && (await this.session.jars.compose(composition));
        this.refuse(null);
      } catch (thrown) {
        if (!(thrown instanceof Failure)) throw thrown;
        this.proposal = null;
        this.refuse(composition && onThePage(thrown, composition));
      }
    } while (this.stale);
    this.asking = false;
  }

  private refuse(failure: Failure | null): void {
    this.refusal = failure;
    this.form.standing = failure;
    if (failure) this.opened = true;
  }

  /** Pours what stands there and goes to the jar. */
  protected async pourAs(told: { name: string; place: string; note?: string; marc_of?: string }): Promise<void> {
    const composition = this.composition;
    if (!composition) return;
    const given = Object.entries(told).filter(([, text]) => text?.trim());
    const named = Object.fromEntries(given.map(([field, text]) => [field, text.trim()]));
    await this.form.send(async () => {
      try {
        const jar = await this.session.jars.pour({ composition, ...named });
        this.session.route.replace(`/jar/${jar.id}`);
      } catch (thrown) {
        throw thrown instanceof Failure ? onThePage(thrown, composition) : thrown;
      }
    });
  }
}

/** The core numbers the liquids of its request; the page knows them by their kind. */
function onThePage(failure: Failure, { stock }: Composition): Failure {
  const field = (failure.field ?? "").replace(/^composition\./, "");
  const [, at, figure] = /^stock\[(\d+)\](?:\.(.*))?$/.exec(field) ?? [];
  const item = at === undefined ? undefined : stock[Number(at)];
  const here = item ? (item.supply || !figure ? `bottle-${item.kind}` : `${item.kind}.${figure}`) : `composition.${field}`;
  return new Failure(failure.code, field ? here : null, failure.message);
}
