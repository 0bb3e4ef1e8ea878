import { Answer } from "./answer.svelte";
import type { Session } from "./session";

/** Looks a name up while it is typed: which herbs it may mean, and whether it is a poisonous plant's. */
export class Lookup {
  private readonly answer: Answer<"herb.find">;

  constructor(session: Session) {
    this.answer = new Answer(session.api, "herb.find");
  }

  /** None where it could not be looked up: the name can still be written down, and what is wrong is said then. */
  get found() {
    return this.answer.reply;
  }

  type(text: string): Promise<void> {
    const sought = text.trim();
    return this.answer.ask(sought ? { text: sought } : null);
  }
}
