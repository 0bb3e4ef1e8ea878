import { Failure, type IngredientKind, type StockItem } from "../../../api";
import { words } from "../../../words";
import { PlainEntry } from "../../../state/form.svelte";

const units = {
  strength_percent_vol: "% vol",
  purity_percent_mass: "%",
  acidity_g_per_100ml: "g / 100 mL",
  sugar_g_per_l: "g / L",
  sugar_percent_mass: "%",
  water_percent_mass: "%",
} as const;

export type FigureName = keyof typeof units;

/** Each kind of liquid, in the order in which they are offered, with the figures of its label. */
const figuresOf: Record<IngredientKind, readonly FigureName[]> = {
  water: [],
  spirit: ["strength_percent_vol"],
  glycerin: ["purity_percent_mass"],
  vinegar: ["acidity_g_per_100ml"],
  wine: ["strength_percent_vol", "sugar_g_per_l"],
  honey: ["water_percent_mass"],
  syrup: ["sugar_percent_mass"],
  juice: ["sugar_percent_mass", "acidity_g_per_100ml"],
  oil: [],
  sugar: [],
};

export const kindsBut = (left: IngredientKind) => (Object.keys(figuresOf) as IngredientKind[]).filter((kind) => kind !== left);

export const oils = () => Object.keys(words.oils) as (keyof typeof words.oils)[];

/** What is read off a bottle: its kind and the figures that such a liquid has. */
export class Figures {
  kind = $state<IngredientKind>("spirit");
  oil = $state<string>("olive");
  readonly entries: Record<FigureName, PlainEntry>;

  constructor(item: StockItem) {
    this.kind = item.kind;
    this.oil = item.oil ?? "olive";
    const entry = (name: FigureName) => [name, new PlainEntry(units[name], item[name])] as const;
    this.entries = Object.fromEntries((Object.keys(units) as FigureName[]).map(entry)) as Record<FigureName, PlainEntry>;
  }

  get names(): readonly FigureName[] {
    return figuresOf[this.kind];
  }

  /** Null until every figure is filled in. */
  get item(): StockItem | null {
    const item: StockItem = { kind: this.kind };
    if (this.kind === "oil") item.oil = this.oil;
    for (const name of this.names) {
      const { amount } = this.entries[name];
      if (amount === null) return null;
      item[name] = amount;
    }
    return item;
  }

  wrong(): Failure[] {
    return this.names.flatMap((name) => {
      const entry = this.entries[name];
      const label = words.supply.figures[name];
      if (entry.empty) return [new Failure("missing", `item.${name}`, words.failure.missing(label))];
      return entry.wrong(`item.${name}`, label, false);
    });
  }
}
