import type { Request } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";

/** The herbs that are known: built in, and the maker's own. */
export class Herbs {
  constructor(private readonly desk: Desk) {}

  list() {
    return hold(this.desk, new Held(this.desk, "herb.list", {}, ["herb", "harvest"]));
  }

  page(key: string) {
    return hold(this.desk, new Held(this.desk, "herb.show", { key }, ["herb", "harvest", "tray", "weighing", "portrait"]));
  }

  /** When to pick the parts of one herb, or all that was ever picked. */
  calendar(key?: string) {
    return hold(this.desk, new Held(this.desk, "herb.calendar", key === undefined ? {} : { key }, ["herb", "harvest", "setting"]));
  }

  async add(request: Request<"herb.add">) {
    return (await this.desk.write("herb.add", request, words.herb.added)).herb;
  }

  async correct(request: Request<"herb.correct">) {
    return (await this.desk.write("herb.correct", request, words.herb.corrected)).herb;
  }
}
