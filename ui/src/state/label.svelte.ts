import { Failure, type IngredientKind, type StockItem } from "../api";
import { words } from "../words";
import { PlainEntry } from "./form.svelte";

const units = {
  strength_percent_vol: "% vol",
  purity_percent_mass: "%",
  acidity_g_per_100ml: "g / 100 mL",
  sugar_g_per_l: "g / L",
  sugar_percent_mass: "%",
  water_percent_mass: "%",
} as const;

export type FigureName = keyof typeof units;

const figuresOf: Record<IngredientKind, readonly FigureName[]> = {
  water: [],
  sugar: [],
  oil: [],
  spirit: ["strength_percent_vol"],
  glycerin: ["purity_percent_mass"],
  vinegar: ["acidity_g_per_100ml"],
  wine: ["strength_percent_vol", "sugar_g_per_l"],
  syrup: ["sugar_percent_mass"],
  honey: ["water_percent_mass"],
  juice: ["sugar_percent_mass", "acidity_g_per_100ml"],
};

export const oils = Object.keys(words.oils) as (keyof typeof words.oils)[];

/** What is read off a bottle: its kind and the figures that such a liquid has. */
export class Label {
  kind = $state<IngredientKind>("spirit");
  oil = $state<string>("olive");
  readonly entries: Record<FigureName, PlainEntry>;

  constructor(item: StockItem) {
    this.kind = item.kind;
    this.oil = item.oil ?? "olive";
    const entry = (name: FigureName) => [name, new PlainEntry(units[name], item[name])] as const;
    this.entries = Object.fromEntries((Object.keys(units) as FigureName[]).map(entry)) as Record<FigureName, PlainEntry>;
  }

  get figures(): readonly FigureName[] {
    return figuresOf[this.kind];
  }

  /** Null until every figure is filled in. */
  get item(): StockItem | null {
    const item: StockItem = { kind: this.kind };
    if (this.kind === "oil") item.oil = this.oil;
    for (const name of this.figures) {
      const { amount } = this.entries[name];
      if (amount === null) return null;
      item[name] = amount;
    }
    return item;
  }

  wrong(): Failure[] {
    return this.figures.flatMap((name) => {
      const entry = this.entries[name];
      const label = words.supply.figures[name];
      if (entry.empty) return [new Failure("missing", `item.${name}`, words.failure.missing(label))];
      return entry.wrong(`item.${name}`, label, false);
    });
  }
}
