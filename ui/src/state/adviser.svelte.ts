import { Failure, type Candidate, type Note, type Purpose, type StockItem } from "../api";
import type { Composer } from "./composer.svelte";
import type { Book } from "./index";

/** What can be left out of a jar, in the core's words. */
export const leavable = ["alcohol", "honey", "sugar", "sweet", "vinegar", "oil", "glycerin", "wine"] as const;
export type Leavable = (typeof leavable)[number];

/** What the chosen herbs can become, best first, by what it is for and what is wanted in it. */
export class Adviser {
  purpose = $state<Purpose | "">("inside");
  without = $state<Leavable[]>([]);
  fromShelf = $state(false);
  candidates = $state.raw<Candidate[] | null>(null);
  /** What the list of poisonous plants asks about the herbs. */
  asks = $state.raw<Note | null>(null);
  failure = $state.raw<Failure | null>(null);
  private asked = 0;

  constructor(
    private readonly book: Book,
    private readonly composer: Composer,
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
    // A later question makes the answer to an earlier one worthless.
    const turn = ++this.asked;
    const [first, ...also] = this.composer.plants;
    if (!first) {
      this.candidates = null;
      return;
    }
    const { herb, part, state, mass_g, sample } = first;
    const moisture = this.composer.chosen.find((one) => one.herb === herb && one.part === part)?.moisture;
    const jar = this.composer.jar.amount;
    try {
      const { candidates, asks } = await this.book.desk.ask("jar.advise", {
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
      if (turn !== this.asked) return;
      this.candidates = candidates;
      this.asks = asks;
      this.failure = null;
    } catch (thrown) {
      if (turn !== this.asked) return;
      if (!(thrown instanceof Failure)) throw thrown;
      this.candidates = null;
      this.failure = thrown;
    }
  }

  private get shelf(): StockItem[] {
    const there = this.composer.supplies.filter(({ left_ml }) => left_ml > 0);
    const bottles = there.map((supply) => ({ ...supply.item, supply: supply.id, available_ml: supply.left_ml }));
    return [...bottles, { kind: "water" }, { kind: "sugar" }];
  }
}
