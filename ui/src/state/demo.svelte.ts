import { Form } from "./form.svelte";
import type { Desk } from "./desk.svelte";
import type { Route } from "./route.svelte";

/** The demo season: a book of its own that lies over the maker's until it is removed. */
export class Demo {
  readonly form = new Form();

  constructor(
    private readonly desk: Desk,
    private readonly route: Route,
    private readonly forget: () => void,
  ) {}

  begin(): Promise<void> {
    return this.swap("demo.begin");
  }

  end(): Promise<void> {
    return this.swap("demo.end");
  }

  private async swap(command: "demo.begin" | "demo.end"): Promise<void> {
    if (this.form.busy) return;
    await this.form.send(async () => {
      await this.desk.ask(command, {});
      // A form that was left belongs to the book that it was left in.
      this.forget();
      await this.desk.refreshAll();
      this.route.replace("/garden");
    });
  }
}
