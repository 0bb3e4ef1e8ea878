import { Failure, type Api, type Changed, type CommandName, type Commands, type Noun, type PicturedKind, type Reply, type Request } from "../api";

type Write = { [N in CommandName]: Reply<N> extends Changed ? N : never }[CommandName];
/** What was written and may be photographed on the spot. */
type Pictured = { kind: PicturedKind; id: string };
/** The nouns that something shows; `every` where it tells of the whole book, for any write may change that. */
export type Shown = readonly Noun[] | "every";
type Refreshing = { readonly name?: CommandName; readonly nouns: Shown; reload(): Promise<void> };

/** Where every call passes: replies refresh what is shown, and the last deed can be taken back. */
export class Desk {
  last = $state.raw<{ deed: string; said: string; of?: Pictured | undefined } | null>(null);
  private moves = 0;
  private readonly shown = new Set<Refreshing>();
  private readonly memory = new Map<string, unknown>();
  /** What was asked before the screen that shows it was there. */
  private readonly ahead = new Set<string>();

  constructor(private readonly api: Api) {}

  async ask<N extends CommandName>(name: N, request: Request<N>): Promise<Reply<N>> {
    const reply = await this.api.call(name, request);
    this.memory.set(key(name, request), reply);
    return reply;
  }

  /** Asks before a screen does, which then finds the reply and need not ask again. */
  async askAhead<N extends CommandName>(name: N, request: Request<N>): Promise<void> {
    try {
      await this.ask(name, request);
      this.ahead.add(key(name, request));
    } catch (thrown) {
      // The screen asks again, and shows why not.
      if (!(thrown instanceof Failure)) throw thrown;
    }
  }

  /** Whether the reply that is remembered was asked for ahead of the screen that shows it now; true once. */
  isAhead<N extends CommandName>(name: N, request: Request<N>): boolean {
    return this.ahead.delete(key(name, request));
  }

  /** The last reply to the same question, so that going back shows its screen at once. */
  remembered<N extends CommandName>(name: N, request: Request<N>): Reply<N> | null {
    return (this.memory.get(key(name, request)) as Commands[N]["reply"] | undefined) ?? null;
  }

  /**
   * With nothing said there is nothing worth taking back. `of` tells from the reply what may be photographed now, `ahead`
   * asks what the next screen shows.
   */
  async write<N extends Write>(
    name: N,
    request: Request<N>,
    said: string | null,
    { of, ahead }: { of?: (reply: Reply<N>) => Pictured | undefined; ahead?: (reply: Reply<N>) => Promise<void> } = {},
  ): Promise<Reply<N> & Changed> {
    const reply = (await this.api.call(name, request)) as Reply<N> & Changed;
    await this.refresh(reply.changed, ahead?.(reply));
    // Said last, so that the screen that wrote goes on in the same breath and pulls nobody back from where they went meanwhile.
    this.last = said === null ? null : { deed: reply.deed, said, of: of?.(reply) };
    this.moves = 0;
    return reply;
  }

  /** Takes back the last deed; undoing that again brings it back. */
  async undo(deed: string): Promise<void> {
    try {
      const reply = await this.api.call("deed.undo", { deed });
      await this.refresh(reply.changed);
      this.last = { deed: reply.deed, said: reply.undone };
      this.moves = 0;
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      this.last = { deed, said: thrown.message };
    }
  }

  /** The offer to undo goes along to the next screen, and no further. */
  moved(): void {
    this.moves += 1;
    if (this.moves > 1) this.last = null;
  }

  close(): void {
    this.last = null;
  }

  keep(held: Refreshing): void {
    this.shown.add(held);
  }

  release(held: Refreshing): void {
    this.shown.delete(held);
  }

  /** After another journal took the place of this one: nothing shown or remembered holds any more. */
  async refreshAll(): Promise<void> {
    this.last = null;
    this.forget();
    await Promise.all([...this.shown].map((held) => held.reload()));
  }

  /** After the answer to one question has changed although no entry has. */
  async refreshAsked(name: CommandName): Promise<void> {
    this.forget();
    await Promise.all([...this.shown].filter((held) => held.name === name).map((held) => held.reload()));
  }

  private forget(): void {
    this.memory.clear();
    this.ahead.clear();
  }

  /** What is shown is asked again. Whoever goes on to another screen waits for what that one asks, `next`, and for nothing else. */
  private async refresh(changed: readonly Noun[], next?: Promise<void>): Promise<void> {
    this.forget();
    const shown = [...this.shown];
    const stale = shown.filter(({ nouns }) => nouns !== "every" && nouns.some((noun) => changed.includes(noun)));
    const reloads = Promise.all(stale.map((held) => held.reload()));
    await (next ?? reloads);
    // What tells of the whole book takes longest and holds nobody up: it is asked once the screen that wrote has gone on.
    requestAnimationFrame(() =>
      setTimeout(() => {
        const whole = shown.filter((held) => held.nouns === "every" && this.shown.has(held));
        void Promise.all(whole.map((held) => held.reload()));
      }),
    );
  }
}

function key(name: string, request: unknown): string {
  return `${name} ${JSON.stringify(request)}`;
}

