import type { BottleCard, Request } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";
import { unroll, type Paging } from "./roll.svelte";

const nouns = ["bottle", "use", "check", "straining", "jar", "dropper", "supply", "portrait"] as const;

/** The filled bottles, and the droppers they are used with. */
export class Bottles {
  private readonly shelf: Paging<"bottle.list", BottleCard> = {
    name: "bottle.list",
    nouns,
    after: (last) => (last ? { after: last.id } : {}),
    lines: (reply) => reply.bottles,
    more: (reply) => reply.more,
    pages: 1,
  };

  constructor(private readonly desk: Desk) {}

  /** The bottles, as far down as is looked. */
  list() {
    return unroll(this.desk, this.shelf);
  }

  /** What there is in all of each kind. */
  stock() {
    return hold(this.desk, new Held(this.desk, "bottle.list", { limit: 1 }, nouns));
  }

  page(id: string) {
    return hold(this.desk, new Held(this.desk, "bottle.show", { id }, nouns));
  }

  ways(bottle: string) {
    return hold(this.desk, new Held(this.desk, "bottle.ways", { bottle }, ["bottle", "jar"]));
  }

  droppers() {
    return hold(this.desk, new Held(this.desk, "dropper.list", {}, ["dropper"]));
  }

  async fill(request: Request<"bottle.fill">) {
    return this.desk.write("bottle.fill", request, words.bottle.filled, { of: ({ bottles: [first] }) => first && { kind: "bottle", id: first.id } });
  }

  async use(request: Request<"bottle.use">) {
    return (await this.desk.write("bottle.use", request, words.bottle.used)).bottle;
  }

  async give(request: Request<"bottle.give">) {
    return (await this.desk.write("bottle.give", request, words.bottle.given)).bottle;
  }

  async check(request: Request<"bottle.check">) {
    return (await this.desk.write("bottle.check", request, words.bottle.checked, { of: ({ bottle }) => ({ kind: "bottle", id: bottle.id }) })).bottle;
  }

  async bin(bottle: string, reason: string) {
    return (await this.desk.write("bottle.bin", { bottle, reason }, words.bottle.binned)).bottle;
  }

  async finish(bottle: string) {
    return (await this.desk.write("bottle.finish", { bottle }, words.bottle.finished)).bottle;
  }

  async correct(request: Request<"bottle.correct">) {
    return (await this.desk.write("bottle.correct", request, words.bottle.corrected)).bottle;
  }

  async countDropper(request: Request<"dropper.count">) {
    return (await this.desk.write("dropper.count", request, words.dropper.counted)).dropper;
  }
}
