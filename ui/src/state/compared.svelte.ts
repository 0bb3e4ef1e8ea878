import { Failure, type JarPage } from "../api";
import type { Jars } from "./jars.svelte";

/** The jars that stand beside each other, the one that was begun with first. */
export class Compared {
  ids = $state.raw<string[]>([]);
  failure = $state.raw<Failure | null>(null);
  private read = $state.raw<ReadonlyMap<string, JarPage>>(new Map());

  constructor(
    private readonly all: Jars,
    first: string,
  ) {
    void this.choose(first, true);
  }

  /** Those that have been read. */
  get jars(): JarPage[] {
    return this.ids.flatMap((id) => this.read.get(id) ?? []);
  }

  async choose(id: string, isChosen: boolean): Promise<void> {
    this.ids = isChosen ? [...this.ids, id] : this.ids.filter((one) => one !== id);
    if (!isChosen || this.read.has(id)) return;
    try {
      const jar = await this.all.shown(id);
      this.read = new Map([...this.read, [id, jar]]);
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      this.failure = thrown;
    }
  }
}
