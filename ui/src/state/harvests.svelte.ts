import { Failure, type HarvestCard, type RecordHarvest, type Request } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";
import { unroll, type Paging } from "./roll.svelte";

/** What a phone shows at once, and what comes at a time further down. */
const FIRST = 6;
const PAGE = 12;

/** What was picked. */
export class Harvests {
  /** How tall the stretches of the list are that were left behind. */
  readonly heights = new Map<string, number>();
  private readonly latest: Paging<"harvest.list", HarvestCard> = {
    name: "harvest.list",
    nouns: ["harvest", "photo", "tray", "jar"],
    after: (last) => (last ? { limit: PAGE, before: last.id } : { limit: FIRST }),
    lines: (reply) => reply.harvests,
    more: (reply) => reply.more,
    pages: 1,
  };

  constructor(private readonly desk: Desk) {}

  /** Asks for the first page of the latest before the garden does, which then finds it remembered. */
  async ahead(): Promise<void> {
    try {
      await this.desk.ask(this.latest.name, this.latest.after(undefined));
    } catch (thrown) {
      // The garden asks again, and shows why not.
      if (!(thrown instanceof Failure)) throw thrown;
    }
  }

  /** The latest first, as far back as is looked. */
  lately() {
    return unroll(this.desk, this.latest);
  }

  ofHerb(herb: string) {
    return hold(this.desk, new Held(this.desk, "harvest.list", { herb, limit: 50 }, ["harvest", "photo", "tray", "jar"]));
  }

  page(id: string) {
    return hold(this.desk, new Held(this.desk, "harvest.show", { id }, ["harvest", "photo", "tray", "weighing", "jar"]));
  }

  async record(request: RecordHarvest) {
    return (await this.desk.write("harvest.record", request, words.harvest.saved)).harvest;
  }

  async correct(id: string, request: Partial<RecordHarvest>) {
    return (await this.desk.write("harvest.correct", { id, ...request }, words.harvest.corrected)).harvest;
  }

  async bin(request: Request<"harvest.bin">) {
    return (await this.desk.write("harvest.bin", request, words.life.emptied)).harvest;
  }
}
