import { onDestroy } from "svelte";
import { Failure, type CommandName, type Noun, type Reply, type Request } from "../api";
import type { Desk } from "./desk.svelte";

/** For what is told across the whole book: any write may change it. */
export const everyNoun: readonly Noun[] = [
  "bed",
  "bottle",
  "check",
  "dropper",
  "harvest",
  "herb",
  "jar",
  "photo",
  "plan",
  "recipe",
  "setting",
  "shake",
  "straining",
  "supply",
  "tray",
  "use",
  "weighing",
];

/** One reply kept on a screen, asked for again when a noun it shows has changed. */
export class Held<N extends CommandName> {
  reply = $state.raw<Reply<N> | null>(null);
  failure = $state.raw<Failure | null>(null);
  private asked = 0;

  constructor(
    private readonly desk: Desk,
    readonly name: N,
    private request: Request<N>,
    readonly nouns: readonly Noun[],
  ) {}

  async load(request: Request<N> = this.request): Promise<void> {
    this.request = request;
    this.reply = this.desk.remembered(this.name, request) ?? this.reply;
    if (!this.desk.isAhead(this.name, request)) await this.reload();
  }

  async reload(): Promise<void> {
    // A later question makes the answer to an earlier one worthless.
    const turn = ++this.asked;
    try {
      const reply = await this.desk.ask(this.name, this.request);
      if (turn !== this.asked) return;
      this.reply = reply;
      this.failure = null;
    } catch (thrown) {
      if (turn !== this.asked) return;
      if (!(thrown instanceof Failure)) throw thrown;
      this.failure = thrown;
      // What was taken back is gone; what merely could not be fetched may stay in sight.
      if (thrown.code === "not_found") this.reply = null;
    }
  }
}

/** Loads what a component shows and lets go of it when the component goes. */
export function hold<N extends CommandName>(desk: Desk, held: Held<N>): Held<N> {
  desk.keep(held);
  onDestroy(() => desk.release(held));
  void held.load();
  return held;
}
