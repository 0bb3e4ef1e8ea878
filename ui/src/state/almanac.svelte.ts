import type { Request } from "../api";
import { firstQuestions } from "../host";
import type { Desk } from "./desk.svelte";
import { everyNoun, Held, hold } from "./held.svelte";

/** What the book tells across its places: what is due, where things went, the year, and where a word stands. */
export class Almanac {
  /** How tall the stretches of its long lists are that were left behind. */
  readonly heights = new Map<string, number>();

  constructor(private readonly desk: Desk) {}

  /** What is due: all of it, or the first lines. */
  due(limit?: number) {
    return hold(this.desk, new Held(this.desk, "due.list", limit === undefined ? {} : { limit }, everyNoun));
  }

  /** How much is due. */
  dueCount() {
    return hold(this.desk, new Held(this.desk, "due.list", firstQuestions["due.list"], everyNoun));
  }

  forward(request: Request<"trace.forward">) {
    return hold(this.desk, new Held(this.desk, "trace.forward", request, everyNoun));
  }

  season(year: number) {
    return hold(this.desk, new Held(this.desk, "season.show", { year }, everyNoun));
  }

  search(text: string) {
    return this.desk.ask("journal.search", { text, limit: 60 });
  }
}
