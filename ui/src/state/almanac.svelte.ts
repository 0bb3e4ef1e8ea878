import type { Noun, Request } from "../api";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";

const everything: readonly Noun[] = [
  "bed",
  "bottle",
  "check",
  "harvest",
  "herb",
  "jar",
  "photo",
  "shake",
  "straining",
  "supply",
  "tray",
  "use",
  "weighing",
];

/** What the book tells across its places: what is due, where things went, the year, and where a word stands. */
export class Almanac {
  constructor(private readonly desk: Desk) {}

  due() {
    return hold(this.desk, new Held(this.desk, "due.list", {}, everything));
  }

  forward(request: Request<"trace.forward">) {
    return hold(this.desk, new Held(this.desk, "trace.forward", request, everything));
  }

  season(year: number) {
    return hold(this.desk, new Held(this.desk, "season.show", { year }, everything));
  }

  search(text: string) {
    return this.desk.ask("search", { text, limit: 60 });
  }
}
