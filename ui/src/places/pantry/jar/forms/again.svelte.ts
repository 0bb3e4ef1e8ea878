import { Failure, type Composition, type IngredientKind, type LotLine, type Plant, type Supply } from "../../../../api";
import { joined, mass as massOf } from "../../../../format/amount";
import { partName } from "../../../../format/part";
import { words } from "../../../../words";
import { Bottle, inRow } from "./composer.svelte";
import { MassEntry } from "../../../../state/form.svelte";
import type { Session } from "../../../../state/session";
import { Making, type Amount, type Supplied } from "./making.svelte";

/** What is made once more: a jar or a recipe on this year's herb, or the marc of a strained jar. */
export type Source = { kind: "jar" | "recipe" | "marc"; id: string };

/** A plant of the recipe, and the lot it is taken from this time. */
export class PlantAgain {
  lot = $state("");
  readonly mass: MassEntry;

  constructor(
    session: Session,
    readonly plant: Plant,
    private readonly common: string,
    readonly lots: LotLine[],
  ) {
    const lot = lots.find((line) => line.left_g >= plant.mass_g) ?? lots[0];
    this.lot = lot?.lot.id ?? "";
    this.mass = new MassEntry(session.units, Math.min(plant.mass_g, lot?.left_g ?? plant.mass_g));
  }

  get name(): string {
    return words.jar.herbOf(`${this.common}, ${partName(this.plant.part)}`, words.jar.state[this.plant.state]);
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
export class Again extends Making {
  base = $state.raw<Composition | null>(null);
  plants = $state.raw<PlantAgain[]>([]);
  bottles = $state.raw<Bottle[]>([]);

  constructor(
    session: Session,
    readonly source: Source,
  ) {
    super(session);
  }

  get onMarc(): boolean {
    return this.source.kind === "marc";
  }

  async open(): Promise<void> {
    try {
      const base = await this.ask();
      const [{ herbs }, { lots }, { preparations }, { supplies }] = await Promise.all([
        this.session.desk.ask("herb.list", {}),
        this.session.desk.ask("lot.list", { limit: 1000 }),
        this.session.desk.ask("preparation.list", {}),
        this.session.desk.ask("supply.list", {}),
      ]);
      const common = (key: string) => herbs.find((line) => line.key === key)?.common ?? key;
      this.plants = base.plants.map(
        (plant) => new PlantAgain(this.session, plant, common(plant.herb), this.onMarc ? [] : like(plant, lots)),
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
    if (kind === "marc") return this.session.desk.ask("jar.marc", { jar: id });
    if (kind === "recipe") return this.session.desk.ask("recipe.compose", { recipe: id });
    return this.session.desk.ask("jar.repeat", { jar: id });
  }

  override get amounts(): Amount[] {
    return this.onMarc ? [] : this.plants.map(({ mass, chosen }) => ({ mass, left_g: chosen?.left_g ?? null }));
  }

  override get supplied(): Supplied[] {
    const herbs = this.plants.map(({ name, chosen }) => ({
      name: chosen?.code ?? name,
      left: chosen ? words.jar.lotLeft(joined(massOf(chosen.left_g, this.session.units))) : "",
      kind: "herb" as const,
    }));
    return [...herbs, ...this.bottles.map((bottle) => inRow(bottle, this.session.units))];
  }

  override get composition(): Composition | null {
    if (!this.base) return null;
    const plants = this.onMarc ? this.base.plants : this.plants.flatMap((one) => one.again ?? []);
    if (plants.length === 0 || plants.length < this.base.plants.length) return null;
    const kept = this.onMarc ? this.base.stock : [];
    const stock = [...kept, ...this.bottles.flatMap((bottle) => bottle.items)];
    const jar = this.jar.amount;
    return { ...this.base, plants, stock: [...stock, { kind: "water" }], ...this.moved, ...(jar ? { jar_ml: jar } : {}) };
  }

  pour(name: string, place: string): Promise<void> {
    return this.pourAs({ name, place, ...(this.onMarc ? { marc_of: this.source.id } : {}) });
  }
}

function like(plant: Plant, lots: LotLine[]): LotLine[] {
  const same = lots.filter((line) => line.herb === plant.herb && line.part === plant.part && line.state === plant.state);
  return same.toSorted((a, b) => b.picked_at.localeCompare(a.picked_at));
}

/** The bottles to pour from, each standing where the recipe has it, or with the recipe's label where the shelf has none. */
function shelved(liquids: IngredientKind[], supplies: Supply[], base: Composition): Bottle[] {
  const kinds = liquids.filter((kind) => kind !== "water");
  return kinds.map((kind) => {
    const shelf = supplies.filter((supply) => supply.item.kind === kind && supply.left_ml > 0);
    const item = base.stock.find((one) => one.kind === kind && one.exactly_ml === undefined);
    const bottle = new Bottle(kind, shelf, item);
    if (item?.supply && shelf.some(({ id }) => id === item.supply)) bottle.supply = item.supply;
    return bottle;
  });
}
