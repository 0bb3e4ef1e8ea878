import type { Request } from "../api";
import { words } from "../words";
import type { Desk } from "./desk.svelte";
import { Held, hold } from "./held.svelte";

/** The bottles that are wanted, and what it takes to have them. */
export class Plans {
  constructor(private readonly desk: Desk) {}

  all() {
    return hold(this.desk, new Held(this.desk, "plan.all", {}, ["plan", "harvest", "tray", "weighing", "jar", "supply", "straining", "bottle", "use"]));
  }

  work(request: Request<"plan.bottles">) {
    return this.desk.ask("plan.bottles", request);
  }

  async save(request: Request<"plan.save">) {
    return (await this.desk.write("plan.save", request, words.plan.saved)).wish;
  }

  async strike(id: string) {
    return (await this.desk.write("plan.strike", { id }, words.plan.struck)).wish;
  }
}
