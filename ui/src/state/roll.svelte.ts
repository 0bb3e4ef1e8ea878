import { onDestroy } from "svelte";
import { Failure, type CommandName, type Reply, type Request } from "../api";
import type { Desk, Shown } from "./desk.svelte";

/** How a long list is asked for: the page after a line, and what of the reply are its lines. */
export type Paging<N extends CommandName, L> = {
  name: N;
  nouns: Shown;
  after: (last: L | undefined) => Request<N>;
  lines: (reply: Reply<N>) => readonly L[];
  more: (reply: Reply<N>) => boolean;
  /** How many pages were looked at, so that the way back leads to the same place. */
  pages: number;
};

/** A list of any length, asked for page by page as far down as the maker looks. */
export class Roll<N extends CommandName, L> {
  lines = $state.raw<readonly L[] | null>(null);
  more = $state(false);
  failure = $state.raw<Failure | null>(null);
  private turn = 0;
  private asking = false;

  constructor(
    private readonly desk: Desk,
    private readonly paging: Paging<N, L>,
  ) {}

  get name(): N {
    return this.paging.name;
  }

  get nouns(): Shown {
    return this.paging.nouns;
  }

  /** Shows at once what is remembered, and asks for the rest. */
  async load(): Promise<void> {
    let lines: readonly L[] = [];
    for (let page = 0; page < this.paging.pages; page += 1) {
      const reply = this.desk.remembered(this.paging.name, this.paging.after(lines.at(-1)));
      if (!reply) return this.reload();
      lines = [...lines, ...this.paging.lines(reply)];
      this.show(lines, reply);
      if (!this.more) break;
    }
  }

  async reload(): Promise<void> {
    const turn = ++this.turn;
    let lines: readonly L[] = [];
    await this.ask(async () => {
      for (let page = 0; page < this.paging.pages; page += 1) {
        const reply = await this.desk.ask(this.paging.name, this.paging.after(lines.at(-1)));
        if (turn !== this.turn) return;
        lines = [...lines, ...this.paging.lines(reply)];
        const isAll = !this.paging.more(reply);
        // A list that is shown already changes once and not page by page.
        if (this.lines === null || isAll || page === this.paging.pages - 1) this.show(lines, reply);
        if (isAll) return;
      }
    });
  }

  /** The next page. */
  async further(): Promise<void> {
    if (this.asking || !this.more || !this.lines) return;
    const turn = this.turn;
    const lines = this.lines;
    await this.ask(async () => {
      const reply = await this.desk.ask(this.paging.name, this.paging.after(lines.at(-1)));
      if (turn !== this.turn) return;
      this.paging.pages += 1;
      this.show([...lines, ...this.paging.lines(reply)], reply);
    });
  }

  private show(lines: readonly L[], reply: Reply<N>): void {
    this.lines = lines;
    this.more = this.paging.more(reply);
    this.failure = null;
  }

  private async ask(body: () => Promise<void>): Promise<void> {
    this.asking = true;
    try {
      await body();
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      this.failure = thrown;
    } finally {
      this.asking = false;
    }
  }
}

/** Loads a long list for a component and lets go of it when the component goes. */
export function unroll<N extends CommandName, L>(desk: Desk, paging: Paging<N, L>): Roll<N, L> {
  const roll = new Roll(desk, paging);
  desk.keep(roll);
  onDestroy(() => desk.release(roll));
  void roll.load();
  return roll;
}
