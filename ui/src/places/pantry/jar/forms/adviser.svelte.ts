import type { Candidate, Failure, Interval, Note, Plant, Purpose, StockItem, Supply, Without } from "../../../../api";
import { Latest } from "../../../../state/latest";
import type { Session } from "../../../../state/session";

/** What can be left out of a jar. */
export const leavable = ["alcohol", "honey", "sugar", "sweet", "vinegar", "oil", "glycerin", "wine"] as const satisfies readonly Without[];

/** What is known of a jar that is being composed. */
interface Composed {
  readonly plants: Plant[];
  readonly chosen: readonly { herb: string; part: string; moisture: Interval | null }[];
  readonly jar: { readonly amount: number | null };
  readonly supplies: readonly Supply[];
  readonly confirmed: boolean;
}

/** What the chosen herbs can become, best first, by what it is for and what is wanted in it. */
export class Adviser {
  purpose = $state<Purpose | "">("inside");
  without = $state<Without[]>([]);
  fromShelf = $state(false);
  candidates = $state.raw<Candidate[] | null>(null);
  /** What the list of poisonous plants asks about the herbs. */
  asks = $state.raw<Note | null>(null);
  failure = $state.raw<Failure | null>(null);
  private readonly latest = new Latest();

  constructor(
    private readonly session: Session,
    private readonly composer: Composed,
  ) {}

  /** What may be made. */
  get offered(): Candidate[] {
    return (this.candidates ?? []).filter(({ verdict }) => verdict !== "do not make");
  }

  /** What must not be made of them. */
  get excluded(): Candidate[] {
    return (this.candidates ?? []).filter(({ verdict }) => verdict === "do not make");
  }

  async ask(): Promise<void> {
    const [first, ...also] = this.composer.plants;
    if (!first) {
      this.latest.drop();
      this.candidates = null;
      return;
    }
    const { herb, part, state, mass_g, sample } = first;
    const moisture = this.composer.chosen.find((one) => one.herb === herb && one.part === part)?.moisture;
    const jar = this.composer.jar.amount;
    const advice = this.session.desk.ask("jar.advise", {
      herb,
      part,
      state,
      mass_g,
      ...(sample ? { sample } : moisture ? { moisture_wet_percent: moisture } : {}),
      also: also.map(({ lot: _, ...plant }) => plant),
      purpose: this.purpose || "inside",
      without: this.without,
      ...(jar ? { jar_ml: jar } : {}),
      ...(this.fromShelf ? { stock: this.shelf } : {}),
      ...(this.composer.confirmed ? { confirmed: true } : {}),
    });
    await this.latest.ask(advice, (advised, failure) => {
      this.candidates = advised?.candidates ?? null;
      if (advised) this.asks = advised.asks;
      this.failure = failure;
    });
  }

  private get shelf(): StockItem[] {
    const there = this.composer.supplies.filter(({ left_ml }) => left_ml > 0);
    const bottles = there.map((supply) => ({ ...supply.item, supply: supply.id, available_ml: supply.left_ml }));
    return [...bottles, { kind: "water" }, { kind: "sugar" }];
  }
}
