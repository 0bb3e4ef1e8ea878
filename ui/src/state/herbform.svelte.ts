import { Failure, type HerbLine, type HerbStop } from "../api";
import { words } from "../words";
import { Form } from "./form.svelte";
import { Lookup } from "./lookup.svelte";
import type { Book } from "./index";

/** An herb of the maker's own on its way into the book. */
export class HerbDraft {
  readonly form = new Form();
  private readonly byCommon: Lookup;
  private readonly byLatin: Lookup;
  common = $state("");
  latin = $state("");
  parts = $state("");

  constructor(
    private readonly book: Book,
    private readonly herb: HerbLine | null,
    name = "",
    latin = "",
  ) {
    this.byCommon = new Lookup(book);
    this.byLatin = new Lookup(book);
    this.common = herb?.common ?? name;
    this.latin = herb?.latin ?? latin;
    this.parts = herb?.parts.join(", ") ?? "";
    this.look();
  }

  /** What the list of poisonous plants says of the names as they stand. */
  get stop(): HerbStop | null {
    return this.byLatin.found?.stop ?? this.byCommon.found?.stop ?? null;
  }

  look(): void {
    void this.byCommon.type(this.common);
    void this.byLatin.type(this.latin);
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
