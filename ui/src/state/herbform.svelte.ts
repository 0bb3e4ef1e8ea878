import { Failure, type HerbLine } from "../api";
import { words } from "../words";
import { Form } from "./form.svelte";
import type { Book } from "./index";

/** An herb of the maker's own on its way into the book. */
export class HerbDraft {
  readonly form = new Form();
  common = $state("");
  latin = $state("");
  parts = $state("");

  constructor(
    private readonly book: Book,
    private readonly herb: HerbLine | null,
    name = "",
  ) {
    this.common = herb?.common ?? name;
    this.latin = herb?.latin ?? "";
    this.parts = herb?.parts.join(", ") ?? "";
  }

  async save(then: (herb: HerbLine) => void): Promise<void> {
    const common = this.common.trim();
    const parts = this.parts
      .split(",")
      .map((part) => part.trim())
      .filter(Boolean);
    const wrong = [
      ...(common ? [] : [new Failure("missing", "common", words.failure.missing(words.herb.common))]),
      ...(parts.length > 0 ? [] : [new Failure("missing", "parts", words.herb.partsMissing)]),
    ];
    const { herbs } = this.book;
    await this.form.send(async () => {
      const latin = this.latin.trim();
      then(this.herb ? await herbs.correct(this.herb.key, common, latin, parts) : await herbs.add(common, latin, parts));
    }, wrong);
  }
}
