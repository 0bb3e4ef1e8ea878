import { Failure, type FoundHerbs } from "../api";
import type { Book } from "./index";

/** Looks a name up while it is typed: which herbs it may mean, and whether it is a poisonous plant's. */
export class Lookup {
  found = $state.raw<FoundHerbs | null>(null);
  private asked = 0;

  constructor(private readonly book: Book) {}

  async type(text: string): Promise<void> {
    // What was typed later makes the answer to this worthless.
    const turn = ++this.asked;
    try {
      const found = text.trim() ? await this.book.desk.ask("herb.find", { text: text.trim() }) : null;
      if (turn === this.asked) this.found = found;
    } catch (thrown) {
      // The name can still be written down; what is wrong is said then.
      if (!(thrown instanceof Failure)) throw thrown;
      if (turn === this.asked) this.found = null;
    }
  }
}
