import { Failure } from "../api/failure";

/** Of questions that overtake each other: a later one makes the answer to an earlier one worthless. */
export class Latest {
  private asked = 0;

  /** Hands on what came of it, an answer or why there is none, unless something was asked since. */
  async ask<T>(answer: Promise<T>, then: (answer: T | null, failure: Failure | null) => void): Promise<void> {
    const turn = ++this.asked;
    let came: T | null = null;
    let failure: Failure | null = null;
    try {
      came = await answer;
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      failure = thrown;
    }
    if (turn === this.asked) then(came, failure);
  }

  /** Waits for no answer any more. */
  drop(): void {
    this.asked += 1;
  }
}
