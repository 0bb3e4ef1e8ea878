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
    return hold(this.desk, new Held(this.desk, "herb.show", { key }, ["herb", "harvest", "tray", "weighing"]));
  }

  async add(common: string, latin: string, parts: string[]) {
    const request = { common, parts, ...(latin ? { latin } : {}) };
    return (await this.desk.write("herb.add", request, words.herb.added)).herb;
  }

  async correct(key: string, common: string, latin: string, parts: string[]) {
    return (await this.desk.write("herb.correct", { key, common, latin, parts }, words.herb.corrected)).herb;
  }
}
