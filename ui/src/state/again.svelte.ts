import { Failure, type Composition, type IngredientKind, type LotLine, type Plant, type Proposal, type Supply } from "../api";
import { words } from "../words";
import { Bottle, type ControlName } from "./composer.svelte";
import { Form, MassEntry, VolumeEntry } from "./form.svelte";
import type { Book } from "./index";

/** What is made once more: a jar or a recipe on this year's herb, or the marc of a strained jar. */
export type Source = { kind: "jar" | "recipe" | "marc"; id: string };

/** A plant of the recipe, and the lot it is taken from this time. */
export class PlantAgain {
  lot = $state("");
  readonly mass: MassEntry;

  constructor(
    book: Book,
    readonly plant: Plant,
    private readonly common: string,
    readonly lots: LotLine[],
  ) {
    const lot = lots.find((line) => line.left_g >= plant.mass_g) ?? lots[0];
    this.lot = lot?.lot.id ?? "";
    this.mass = new MassEntry(book.units, Math.min(plant.mass_g, lot?.left_g ?? plant.mass_g));
  }

  get name(): string {
    return words.jar.herbOf(`${this.common}, ${this.plant.part}`, words.jar.state[this.plant.state]);
  }

  get chosen(): LotLine | null {
    return this.lots.find((line) => line.lot.id === this.lot) ?? null;
  }

  get again(): Plant | null {
    const grams = this.mass.amount;
    if (!this.chosen || !grams) return null;
    const { herb, part, state } = this.plant;
    return { lot: this.chosen.lot, herb, part, state, mass_g: grams };
  }
}

/** A jar worked out from one that was made before. */
export class Again {
  readonly form = new Form();
  readonly jar: VolumeEntry;
  base = $state.raw<Composition | null>(null);
  plants = $state.raw<PlantAgain[]>([]);
  bottles = $state.raw<Bottle[]>([]);
  moved = $state.raw<Partial<Record<ControlName, number>>>({});
  proposal = $state.raw<Proposal | null>(null);
  refusal = $state.raw<Failure | null>(null);
  private asking = false;
  private stale = false;

  constructor(
    private readonly book: Book,
    readonly source: Source,
  ) {
    this.jar = new VolumeEntry(book.units);
  }

  get onMarc(): boolean {
    return this.source.kind === "marc";
  }

  async open(): Promise<void> {
    try {
      const base = await this.ask();
      const [{ herbs }, { lots }, { preparations }, { supplies }] = await Promise.all([
        this.book.desk.ask("herb.list", {}),
        this.book.desk.ask("lot.list", {}),
        this.book.desk.ask("preparation.list", {}),
        this.book.desk.ask("supply.list", {}),
      ]);
      const common = (key: string) => herbs.find((line) => line.key === key)?.common ?? key;
      this.plants = base.plants.map(
        (plant) => new PlantAgain(this.book, plant, common(plant.herb), this.onMarc ? [] : like(plant, lots)),
      );
      const named = preparations.find(({ key }) => key === base.preparation)?.liquids ?? [];
      this.bottles = shelved(named, supplies, base);
      this.base = base;
      await this.recompose();
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      this.refusal = thrown;
    }
  }

  private ask(): Promise<Composition> {
    const { kind, id } = this.source;
    if (kind === "marc") return this.book.desk.ask("jar.marc", { jar: id });
    if (kind === "recipe") return this.book.desk.ask("recipe.compose", { recipe: id });
    return this.book.desk.ask("jar.repeat", { jar: id });
  }

  move(control: ControlName, value: number): void {
    this.moved = { ...this.moved, [control]: value };
    void this.recompose();
  }

  get composition(): Composition | null {
    if (!this.base) return null;
    const plants = this.onMarc ? this.base.plants : this.plants.flatMap((one) => one.again ?? []);
    if (plants.length === 0 || plants.length < this.base.plants.length) return null;
    const kept = this.onMarc ? this.base.stock : [];
    const stock = [...kept, ...this.bottles.flatMap((bottle) => bottle.items)];
    const jar = this.jar.amount;
    return { ...this.base, plants, stock: [...stock, { kind: "water" }], ...this.moved, ...(jar ? { jar_ml: jar } : {}) };
  }

  /** Asks the core anew; while an answer is on its way only the newest question is kept. */
  async recompose(): Promise<void> {
    if (this.asking) {
      this.stale = true;
      return;
    }
    this.asking = true;
    do {
      this.stale = false;
      const composition = this.composition;
      try {
        this.proposal = composition && (await this.book.jars.compose(composition));
        this.refusal = null;
      } catch (thrown) {
        if (!(thrown instanceof Failure)) throw thrown;
        this.proposal = null;
        this.refusal = thrown;
      }
    } while (this.stale);
    this.asking = false;
  }

  async pour(name: string, place: string): Promise<void> {
    const composition = this.composition;
    if (!composition) return;
    await this.form.send(async () => {
      const jar = await this.book.jars.pour({
        composition,
        ...(name.trim() ? { name: name.trim() } : {}),
        ...(place.trim() ? { place: place.trim() } : {}),
        ...(this.onMarc ? { marc_of: this.source.id } : {}),
      });
      this.book.route.replace(`/jar/${jar.id}`);
    });
  }
}

function like(plant: Plant, lots: LotLine[]): LotLine[] {
  const same = lots.filter((line) => line.herb === plant.herb && line.part === plant.part && line.state === plant.state);
  return same.toSorted((a, b) => b.picked_at.localeCompare(a.picked_at));
}

/** The bottles to pour from, each standing where the recipe has it, or with the recipe's label where the shelf has none. */
function shelved(liquids: string[], supplies: Supply[], base: Composition): Bottle[] {
  const kinds = liquids.filter((kind) => kind !== "water") as IngredientKind[];
  return kinds.map((kind) => {
    const shelf = supplies.filter((supply) => supply.item.kind === kind && supply.left_ml > 0);
    const item = base.stock.find((one) => one.kind === kind && one.exactly_ml === undefined);
    const bottle = new Bottle(kind, shelf, item);
    if (item?.supply && shelf.some(({ id }) => id === item.supply)) bottle.supply = item.supply;
    return bottle;
  });
}
