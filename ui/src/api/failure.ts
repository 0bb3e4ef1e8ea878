/** What the core refuses, in a finished sentence, with the request field it is about. */
export class Failure extends Error {
  constructor(
    readonly code: string,
    readonly field: string | null,
    message: string,
  ) {
    super(message);
    this.name = "Failure";
  }
}
