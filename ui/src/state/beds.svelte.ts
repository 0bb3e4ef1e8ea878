import type { Request } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";

/** Where things grow: the maker's beds and the wild places. */
export class Beds {
  constructor(private readonly desk: Desk) {}

  list() {
    return hold(this.desk, new Held(this.desk, "bed.list", {}, ["bed"]));
  }

  page(id: string) {
    return hold(this.desk, new Held(this.desk, "bed.show", { id }, ["bed", "portrait"]));
  }

  async correct(request: Request<"bed.correct">) {
    return (await this.desk.write("bed.correct", request, words.harvest.bedCorrected)).bed;
  }
}
