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
  type Units,
} from "../../../../api";
import { Adviser } from "./adviser.svelte";
import { MassEntry } from "../../../../state/form.svelte";
import { Figures } from "../../forms/figures.svelte";
import { Making, type Amount, type Supplied } from "./making.svelte";
import { joined, mass, volume } from "../../../../format/amount";
import { words } from "../../../../words";
import type { Session } from "../../../../state/session";

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
  readonly figures: Figures;

  constructor(
    readonly kind: IngredientKind,
    readonly shelf: Supply[],
    item: StockItem = { kind },
  ) {
    this.figures = new Figures(item);
    const stocked = shelf.filter(({ left_ml }) => left_ml > 0);
    this.supply = stocked.length > 1 ? "all" : (stocked[0]?.id ?? "other");
  }

  /** What the jar may be filled from: one bottle, every bottle of the kind, or one with its label read off. */
  get items(): StockItem[] {
    if (this.supply === "other") return this.figures.item ? [this.figures.item] : [];
    const taken = this.supply === "all" ? this.shelf.filter(({ left_ml }) => left_ml > 0) : this.shelf.filter(({ id }) => id === this.supply);
    return taken.map((supply) => ({ ...supply.item, supply: supply.id, available_ml: supply.left_ml }));
  }
}

/** A bottle as it stands in the row of supplies. */
export function inRow(bottle: Bottle, units: Units): Supplied {
  const taken = bottle.supply === "all" ? bottle.shelf : bottle.shelf.filter(({ id }) => id === bottle.supply);
  const left = taken.reduce((sum, { left_ml }) => sum + left_ml, 0);
  const kind = words.jar.kinds[bottle.kind];
  return {
    name: taken.length === 1 ? (taken[0]?.name ?? kind) : kind,
    left: taken.length > 0 ? words.jar.leftOn(joined(volume(left, units))) : words.jar.byLabel,
    kind: "liquid",
  };
}

/** A change that would help a jar that must not be made: something to do, or a field that wants an answer. */
export type Help = { label: string; take?: () => void; field?: string };

// Every kitchen has these, and nothing on them needs reading.
const atHand: readonly IngredientKind[] = ["water", "sugar"];

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

  constructor(session: Session) {
    super(session);
    this.adviser = new Adviser(session, this);
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
      this.session.desk.ask("lot.list", { limit: 1000 }),
      this.session.desk.ask("preparation.list", {}),
      this.session.desk.ask("supply.list", {}),
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
    const mass = new MassEntry(this.session.units, left_g);
    const sample = new Sample();
    this.put({ id: lot.id, lot, code, herb, common, part, state, left_g, moisture: moisture_wet_percent, mass, sample });
  }

  /** A plant that was bought or given: the book knows its herb, but no harvest. */
  add(herb: HerbLine, part: string, state: PlantState): void {
    const mass = new MassEntry(this.session.units);
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
    const kinds = liquids.filter((kind) => !atHand.includes(kind));
    this.bottles = kinds.map((kind) => {
      const shelf = this.supplies.filter((supply) => supply.item.kind === kind);
      return new Bottle(kind, shelf);
    });
    this.choosingPreparation = key === "";
    this.opened = this.herbless || this.bottles.some(({ supply }) => supply === "other");
    void this.recompose();
  }

  /** Asks anew what it shall become; what was chosen stays until something else is. */
  another(): void {
    this.choosingPreparation = true;
    void this.adviser.ask();
  }

  /** The change that would help, of those that can be made from this page the nearest; else another preparation. */
  get help(): Help {
    const w = words.jar.helps;
    const helps = new Set(this.proposal?.would_help.map(({ code }) => code));
    const { ratio_ml_per_g: ratio, strength_percent_vol: strength, glycerin_percent_vol: glycerin } = this.proposal?.controls ?? {};
    if (helps.has("usual-strength") && strength) return { label: w.usualStrength, take: () => this.move("strength_percent_vol", strength.usual) };
    if (helps.has("higher-ratio") && ratio) {
      const steps = Math.ceil((0.5 * ratio.value) / ratio.step);
      return { label: w.pourMore, take: () => this.move("ratio_ml_per_g", Math.min(ratio.high, ratio.value + steps * ratio.step)) };
    }
    if (helps.has("more-glycerin") && glycerin) return { label: w.glycerin, take: () => this.move("glycerin_percent_vol", glycerin.high) };
    if (helps.has("stronger-spirit")) return { label: w.spirit, take: () => (this.opened = true) };
    const fresh = this.chosen.findIndex(({ state }) => state === "fresh");
    if (helps.has("oven-sample")) return { label: words.jar.sampleEnter, field: `composition.plants[${fresh}].sample.fresh_g` };
    const lot = this.chosen[fresh]?.lot;
    if (helps.has("dry-the-herb") && lot) return { label: w.dry, take: () => this.session.route.go(`/start-tray/${lot.id}`) };
    return { label: words.jar.otherPreparation, take: () => this.another() };
  }

  override get supplied(): Supplied[] {
    const { units } = this.session;
    const herbs = this.chosen.map(({ code, common, left_g }) => ({
      name: code ?? common,
      left: left_g === null ? words.jar.byLabel : words.jar.lotLeft(joined(mass(left_g, units))),
      kind: "herb" as const,
    }));
    return [...herbs, ...this.bottles.map((bottle) => inRow(bottle, units))];
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
    const kitchen = atHand.filter((kind) => liquids.includes(kind));
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
