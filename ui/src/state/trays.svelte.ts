import type { Reply, Request, TrayLine } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";
import { unroll, type Paging } from "./roll.svelte";

/** The drying runs on the rack, and what came down dry. */
export class Trays {
  private readonly rack: Paging<"tray.list", TrayLine> = {
    name: "tray.list",
    nouns: ["tray", "weighing", "harvest", "jar"],
    after: (last) => (last ? { after: last.id } : {}),
    lines: (reply) => reply.trays,
    more: (reply) => reply.more,
    pages: 1,
  };

  constructor(private readonly desk: Desk) {}

  /** The rack, as far down as is looked. */
  list() {
    return unroll(this.desk, this.rack);
  }

  page(id: string) {
    return hold(this.desk, new Held(this.desk, "tray.show", { id }, ["tray", "weighing", "harvest", "jar"]));
  }

  /** The page of a tray that was just made, which its form goes on to. */
  private readonly ahead = ({ tray: { id } }: Reply<"tray.start">) => this.desk.askAhead("tray.show", { id });

  async start(request: Request<"tray.start">) {
    return (await this.desk.write("tray.start", request, words.tray.started, { ahead: this.ahead })).tray;
  }

  async cook(request: Request<"lot.cook">) {
    return (await this.desk.write("lot.cook", request, words.cook.cooked, { ahead: this.ahead })).tray;
  }

  async weigh(request: Request<"tray.weigh">) {
    return (await this.desk.write("tray.weigh", request, words.tray.weighed)).tray;
  }

  async takeDown(request: Request<"tray.take_down">) {
    return (await this.desk.write("tray.take_down", request, words.tray.takenDown)).tray;
  }

  async correct(request: Request<"tray.correct">) {
    return (await this.desk.write("tray.correct", request, words.tray.corrected)).tray;
  }

  async correctWeighing(request: Request<"weighing.correct">) {
    return (await this.desk.write("weighing.correct", request, words.tray.weighingCorrected)).tray;
  }

  async strikeWeighing(id: string) {
    return (await this.desk.write("weighing.strike", { id }, words.tray.weighingStruck)).tray;
  }

  async sample(request: Request<"tray.sample">) {
    return (await this.desk.write("tray.sample", request, words.tray.sampled)).tray;
  }

  async bin(request: Request<"tray.bin">) {
    return (await this.desk.write("tray.bin", request, words.life.emptied)).tray;
  }
}
