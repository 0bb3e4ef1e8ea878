import type { Api, CommandName, Failure, Reply, Request } from "../api";
import { Latest } from "./latest";

/** An answer that follows its question while it is typed; there is none while the question is not whole. */
export class Answer<N extends CommandName> {
  reply = $state.raw<Reply<N> | null>(null);
  failure = $state.raw<Failure | null>(null);
  private readonly latest = new Latest();

  constructor(
    private readonly api: Api,
    private readonly name: N,
  ) {}

  async ask(request: Request<N> | null): Promise<void> {
    const answer = request === null ? Promise.resolve(null) : this.api.call(this.name, request);
    await this.latest.ask(answer, (reply, failure) => {
      this.reply = reply;
      this.failure = failure;
    });
  }
}
