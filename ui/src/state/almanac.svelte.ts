import type { HarvestCard, Request } from "../api";
import { firstQuestions } from "../host";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";

/** What the book tells across its places: what is due, where things went, the year, and where a word stands. */
export class Almanac {
  /** How tall the stretches of its long lists are that were left behind. */
  readonly heights = new Map<string, number>();

  constructor(private readonly desk: Desk) {}

  /** What is due: all of it, or the first lines. */
  due(limit?: number) {
    return hold(this.desk, new Held(this.desk, "due.list", limit === undefined ? {} : { limit }, "every"));
  }

  /** What is due by today, and nothing of the days after. */
  dueNow() {
    return hold(this.desk, new Held(this.desk, "due.list", { days: 0 }, "every"));
  }

  /** How much is due. */
  dueCount() {
    return hold(this.desk, new Held(this.desk, "due.list", firstQuestions["due.list"], "every"));
  }

  forward(request: Request<"trace.forward">) {
    return hold(this.desk, new Held(this.desk, "trace.forward", request, "every"));
  }

  season(year: number) {
    return hold(this.desk, new Held(this.desk, "season.show", { year }, "every"));
  }

  /** What was picked in a year, the latest first. The list goes back from today, so an older year takes a few pages more. */
  async picked(year: number): Promise<HarvestCard[]> {
    const found: HarvestCard[] = [];
    for (let before: string | undefined; ; ) {
      const { harvests, more } = await this.desk.ask("harvest.list", { limit: 200, ...(before ? { before } : {}) });
      found.push(...harvests.filter(({ picked_at }) => Number(picked_at.slice(0, 4)) === year));
      const last = harvests.at(-1);
      if (!last || !more || Number(last.picked_at.slice(0, 4)) < year) return found;
      before = last.id;
    }
  }

  search(text: string) {
    return this.desk.ask("journal.search", { text, limit: 60 });
  }
}
