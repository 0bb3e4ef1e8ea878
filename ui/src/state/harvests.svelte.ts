import type { HarvestCard, RecordHarvest, Reply, Request } from "../api";
import { firstQuestions } from "../host";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";
import { unroll, type Paging } from "./roll.svelte";

/** What comes at a time below what a phone shows at once. */
const PAGE = 12;

/** What was picked. */
export class Harvests {
  /** How tall the stretches of the list are that were left behind. */
  readonly heights = new Map<string, number>();
  private readonly latest: Paging<"harvest.list", HarvestCard> = {
    name: "harvest.list",
    nouns: ["harvest", "photo", "tray", "jar"],
    after: (last) => (last ? { limit: PAGE, before: last.id } : firstQuestions["harvest.list"]),
    lines: (reply) => reply.harvests,
    more: (reply) => reply.more,
    pages: 1,
  };

  constructor(private readonly desk: Desk) {}

  /** The latest first, as far back as is looked. */
  lately() {
    return unroll(this.desk, this.latest);
  }

  page(id: string) {
    return hold(this.desk, new Held(this.desk, "harvest.show", { id }, ["harvest", "photo", "tray", "weighing", "jar"]));
  }

  async record(request: RecordHarvest) {
    const ahead = (reply: Reply<"harvest.record">) => this.desk.askAhead("harvest.show", { id: reply.harvest.id });
    return (await this.desk.write("harvest.record", request, words.harvest.saved, { ahead })).harvest;
  }

  async correct(id: string, request: Partial<RecordHarvest>) {
    return (await this.desk.write("harvest.correct", { id, ...request }, words.harvest.corrected)).harvest;
  }

  async bin(request: Request<"harvest.bin">) {
    return (await this.desk.write("harvest.bin", request, words.life.emptied)).harvest;
  }
}
