import { onDestroy } from "svelte";
import type { CommandName, Failure, Reply, Request } from "../api";
import type { Desk, Shown } from "./desk.svelte";
import { Latest } from "./latest";

/** One reply kept on a screen, asked for again when a noun it shows has changed. */
export class Held<N extends CommandName> {
  reply = $state.raw<Reply<N> | null>(null);
  failure = $state.raw<Failure | null>(null);
  private readonly latest = new Latest();

  constructor(
    private readonly desk: Desk,
    readonly name: N,
    private request: Request<N>,
    readonly nouns: Shown,
  ) {}

  async load(request: Request<N> = this.request): Promise<void> {
    this.request = request;
    this.reply = this.desk.remembered(this.name, request) ?? this.reply;
    if (!this.desk.isAhead(this.name, request)) await this.reload();
  }

  async reload(): Promise<void> {
    await this.latest.ask(this.desk.ask(this.name, this.request), (reply, failure) => {
      // What was taken back is gone; what merely could not be fetched may stay in sight.
      if (reply || failure?.code === "not_found") this.reply = reply;
      this.failure = failure;
    });
  }
}

/** Loads what a component shows and lets go of it when the component goes. */
export function hold<N extends CommandName>(desk: Desk, held: Held<N>): Held<N> {
  desk.keep(held);
  onDestroy(() => desk.release(held));
  void held.load();
  return held;
}
