import { Failure, type HerbLine, type HerbStop } from "../api";
import { words } from "../words";
import { Form, PlainEntry } from "./form.svelte";
import { Lookup } from "./lookup.svelte";
import type { Session } from "./session";

/** An herb of the maker's own on its way into the book. */
export class HerbDraft {
  readonly form = new Form();
  private readonly byCommon: Lookup;
  private readonly byLatin: Lookup;
  common = $state("");
  latin = $state("");
  parts = $state("");
  caution = $state("");
  lookAlikes = $state("");
  readonly water: PlainEntry;
  readonly leastWater: PlainEntry;
  readonly mostWater: PlainEntry;
  readonly strength: PlainEntry;

  constructor(
    private readonly session: Session,
    private readonly herb: HerbLine | null,
    name = "",
    latin = "",
  ) {
    this.byCommon = new Lookup(session);
    this.byLatin = new Lookup(session);
    this.common = herb?.common ?? name;
    this.latin = herb?.latin ?? latin;
    this.parts = herb?.parts.join(", ") ?? "";
    const figures = herb?.own_figures;
    const water = figures?.water_wet_percent;
    this.water = new PlainEntry("%", water?.value);
    this.leastWater = new PlainEntry("%", water?.low);
    this.mostWater = new PlainEntry("%", water?.high);
    this.strength = new PlainEntry("% vol", figures?.strength_percent_vol ?? undefined);
    this.caution = figures?.caution ?? "";
    this.lookAlikes = figures?.look_alikes ?? "";
    this.look();
  }

  /** Whether anything is written down of what the maker knows. */
  get isKnown(): boolean {
    return [this.water, this.strength].some(({ empty }) => !empty) || [this.caution, this.lookAlikes].some(Boolean);
  }

  /** What is wrong with the figures: water takes all three or none. */
  private wrongFigures(): Failure[] {
    const w = words.herb.known;
    const water = [this.water, this.leastWater, this.mostWater];
    const isAsked = water.some(({ empty }) => !empty);
    return [
      ...this.water.wrong("water_wet_percent", w.water, isAsked),
      ...this.leastWater.wrong("least_water", w.leastWater, isAsked),
      ...this.mostWater.wrong("most_water", w.mostWater, isAsked),
      ...this.strength.wrong("strength_percent_vol", w.strength, false),
    ];
  }

  /** What the maker knows, for the wire; what an herb had and is left empty now is taken back. */
  private get figures() {
    const water = { low: this.leastWater.amount ?? 0, value: this.water.amount ?? 0, high: this.mostWater.amount ?? 0 };
    const all = {
      water_wet_percent: water,
      strength_percent_vol: this.strength.amount ?? 0,
      caution: this.caution.trim(),
      look_alikes: this.lookAlikes.trim(),
    };
    if (this.herb) return all;
    return {
      ...(this.water.empty ? {} : { water_wet_percent: water }),
      ...(this.strength.empty ? {} : { strength_percent_vol: all.strength_percent_vol }),
      ...(all.caution ? { caution: all.caution } : {}),
      ...(all.look_alikes ? { look_alikes: all.look_alikes } : {}),
    };
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
      ...this.wrongFigures(),
    ];
    const { herbs } = this.session;
    await this.form.send(async () => {
      const latin = this.latin.trim();
      const request = { common, parts, ...this.figures };
      then(
        this.herb
          ? await herbs.correct({ key: this.herb.key, latin, ...request })
          : await herbs.add({ ...request, ...(latin ? { latin } : {}) }),
      );
    }, wrong);
  }
}
