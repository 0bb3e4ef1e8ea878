import type { Request } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";

/** The bottles on the shelf that jars are poured from. */
export class Supplies {
  constructor(private readonly desk: Desk) {}

  list() {
    return hold(this.desk, new Held(this.desk, "supply.list", {}, ["supply", "jar"]));
  }

  async add(request: Request<"supply.add">) {
    return (await this.desk.write("supply.add", request, words.supply.added)).supply;
  }

  async correct(request: Request<"supply.correct">) {
    return (await this.desk.write("supply.correct", request, words.supply.corrected)).supply;
  }
}
