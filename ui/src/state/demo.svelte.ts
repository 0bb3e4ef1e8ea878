import { Form } from "./form.svelte";
import type { Book } from "./index";

/** The demo season: a book of its own that lies over the maker's until it is removed. */
export class Demo {
  readonly form = new Form();

  constructor(private readonly book: Book) {}

  begin(): Promise<void> {
    return this.swap("demo.begin");
  }

  end(): Promise<void> {
    return this.swap("demo.end");
  }

  private async swap(command: "demo.begin" | "demo.end"): Promise<void> {
    if (this.form.busy) return;
    await this.form.send(async () => {
      await this.book.desk.ask(command, {});
      // A form that was left belongs to the book that it was left in.
      this.book.draft = null;
      await this.book.desk.refreshAll();
      this.book.route.replace("/garden");
    });
  }
}
