import {
  Failure,
  type Composition,
  type HerbLine,
  type IngredientKind,
  type Interval,
  type Lot,
  type LotLine,
  type Plant,
  type PlantSample,
  type PlantState,
  type PreparationLine,
  type StockItem,
  type Supply,
} from "../api";
import { Adviser } from "./adviser.svelte";
import { MassEntry } from "./form.svelte";
import { Label } from "./label.svelte";
import { Making, type Amount } from "./making.svelte";
import type { Book } from "./index";

/** A plant on its way into the jar: from a lot of the book, or from elsewhere. */
export type Chosen = {
  id: string;
  lot: Lot | null;
  code: string | null;
  herb: string;
  common: string;
  part: string;
  state: PlantState;
  left_g: number | null;
  moisture: Interval | null;
  mass: MassEntry;
  sample: Sample;
};

/** A little of the lot on its way into the oven and out of it. */
export class Sample {
  readonly fresh = new MassEntry("metric");
  readonly dry = new MassEntry("metric");

  /** Nothing until both are weighed. */
  get taken(): { sample?: PlantSample } {
    const [fresh_g, dry_g] = [this.fresh.amount, this.dry.amount];
    if (!fresh_g || !dry_g) return {};
    return { sample: { fresh_g, dry_g, scale_step_g: Math.min(this.fresh.step, this.dry.step) } };
  }
}

/** One of the liquids a preparation is poured from: a bottle of the shelf, or another with its label read off. */
export class Bottle {
  supply = $state("");
  readonly label: Label;

  constructor(
    readonly kind: IngredientKind,
    readonly shelf: Supply[],
    label: StockItem = { kind },
  ) {
    this.label = new Label(label);
    const stocked = shelf.filter(({ left_ml }) => left_ml > 0);
    this.supply = stocked.length > 1 ? "all" : (stocked[0]?.id ?? "other");
  }

  /** What the jar may be filled from: one bottle, every bottle of the kind, or one with its label read off. */
  get items(): StockItem[] {
    if (this.supply === "other") return this.label.item ? [this.label.item] : [];
    const taken = this.supply === "all" ? this.shelf.filter(({ left_ml }) => left_ml > 0) : this.shelf.filter(({ id }) => id === this.supply);
    return taken.map((supply) => ({ ...supply.item, supply: supply.id, available_ml: supply.left_ml }));
  }
}

// Every kitchen has these, and nothing on them needs reading.
const atHand: readonly string[] = ["water", "sugar"];

/** A jar being worked out from what there is: what goes in, and what the core proposes for it. */
export class Composer extends Making {
  readonly adviser: Adviser;
  lots = $state.raw<LotLine[] | null>(null);
  chosen = $state.raw<Chosen[]>([]);
  choosing = $state(false);
  /** Nothing but liquids: an elixir. */
  herbless = $state(false);
  preparations = $state.raw<PreparationLine[]>([]);
  preparation = $state("");
  choosingPreparation = $state(true);
  bottles = $state.raw<Bottle[]>([]);
  supplies = $state.raw<Supply[]>([]);
  /** The maker's deliberate yes to what the list of poisonous plants asks. */
  confirmed = $state(false);

  constructor(book: Book) {
    super(book);
    this.adviser = new Adviser(book, this);
  }

  /** Fetches what there is to choose from; `lot` is "harvest:<id>" or "tray:<id>" when the way here named one. */
  async open(lot: string | null): Promise<void> {
    try {
      await this.fetch();
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      this.refusal = thrown;
      return;
    }
    const named = this.lots?.find((line) => `${line.lot.kind}:${line.lot.id}` === lot);
    if (named) this.toggle(named);
    else this.choosing = true;
  }

  private async fetch(): Promise<void> {
    const [{ lots }, { preparations }, { supplies }] = await Promise.all([
      this.book.desk.ask("lot.list", { limit: 1000 }),
      this.book.desk.ask("preparation.list", {}),
      this.book.desk.ask("supply.list", {}),
    ]);
    this.lots = lots;
    this.preparations = preparations;
    this.supplies = supplies;
  }

  /** Preparations that suit every chosen plant as it is, fresh or dried; without one, those of liquids alone. */
  get fitting(): PreparationLine[] {
    if (this.herbless) return this.preparations.filter((one) => !one.fresh && !one.dried && !one.cooked);
    const states = this.chosen.map(({ state }) => state);
    if (states.length === 0) return [];
    return this.preparations.filter((one) => states.every((state) => one[state]));
  }

  has(line: LotLine): boolean {
    return this.chosen.some((one) => one.id === line.lot.id);
  }

  toggle(line: LotLine): void {
    if (this.has(line)) return this.leaveOut(line.lot.id);
    const { lot, code, herb, common, part, state, left_g, moisture_wet_percent } = line;
    const mass = new MassEntry(this.book.units, left_g);
    const sample = new Sample();
    this.put({ id: lot.id, lot, code, herb, common, part, state, left_g, moisture: moisture_wet_percent, mass, sample });
  }

  /** A plant that was bought or given: the book knows its herb, but no harvest. */
  add(herb: HerbLine, part: string, state: PlantState): void {
    const mass = new MassEntry(this.book.units);
    const id = `${herb.key} ${part} ${state}`;
    if (this.chosen.some((one) => one.id === id)) return;
    const { key, common } = herb;
    this.put({ id, lot: null, code: null, herb: key, common, part, state, left_g: null, moisture: null, mass, sample: new Sample() });
  }

  leaveOut(id: string): void {
    this.changePlants(this.chosen.filter((one) => one.id !== id));
  }

  private put(plant: Chosen): void {
    this.herbless = false;
    this.changePlants([...this.chosen, plant]);
  }

  private changePlants(chosen: Chosen[]): void {
    this.chosen = chosen;
    this.confirmed = false;
    // What was moved for another herb says nothing about this one.
    this.moved = {};
    if (!this.fitting.some((one) => one.key === this.preparation)) this.prepare("");
    else void this.recompose();
  }

  withoutHerb(): void {
    this.chosen = [];
    this.choosing = false;
    this.herbless = true;
    this.prepare("");
  }

  prepare(key: string): void {
    this.preparation = key;
    this.moved = {};
    this.proposal = null;
    const liquids = this.preparations.find((one) => one.key === key)?.liquids ?? [];
    const kinds = liquids.filter((kind) => !atHand.includes(kind)) as IngredientKind[];
    this.bottles = kinds.map((kind) => {
      const shelf = this.supplies.filter((supply) => supply.item.kind === kind);
      return new Bottle(kind, shelf);
    });
    this.choosingPreparation = key === "";
    void this.recompose();
  }

  override get amounts(): Amount[] {
    return this.chosen;
  }

  /** The plants whose amount is known, as the core takes them. */
  get plants(): Plant[] {
    return this.chosen.flatMap(({ lot, herb, part, state, mass, sample }) => {
      const grams = mass.amount;
      if (!grams) return [];
      return [{ ...(lot ? { lot } : {}), herb, part, state, mass_g: grams, ...sample.taken }];
    });
  }

  override get composition(): Composition | null {
    const plants = this.plants;
    if (!this.preparation || (plants.length === 0 && !this.herbless)) return null;
    const bottles = this.bottles.flatMap((bottle) => bottle.items);
    const liquids = this.preparations.find((one) => one.key === this.preparation)?.liquids ?? [];
    const kitchen = atHand.filter((kind) => liquids.includes(kind)) as IngredientKind[];
    const jar = this.jar.amount;
    if (this.herbless && !jar) return null;
    return {
      preparation: this.preparation,
      plants,
      stock: [...kitchen.map((kind) => ({ kind })), ...bottles],
      ...this.moved,
      ...(jar ? { jar_ml: jar } : {}),
      ...(this.confirmed ? { confirmed: true } : {}),
    };
  }

  override async recompose(): Promise<void> {
    if (this.choosingPreparation) void this.adviser.ask();
    await super.recompose();
  }

  pour(name: string, place: string, note: string): Promise<void> {
    return this.pourAs({ name, place, note });
  }
}
