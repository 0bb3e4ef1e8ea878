import { Failure, type Composition, type Controls, type IngredientKind, type LotLine, type PreparationLine, type Proposal, type StockItem, type Supply } from "../api";
import { Form, MassEntry, PlainEntry, VolumeEntry } from "./form.svelte";
import type { Book } from "./index";

export type ControlName = keyof Controls;
export type ChosenLot = { line: LotLine; mass: MassEntry };

/** What a label says about a liquid, by kind: the field of the wire and its unit. */
export const labelFigure = {
  spirit: { field: "strength_percent_vol", unit: "% vol" },
  glycerin: { field: "purity_percent_mass", unit: "%" },
  vinegar: { field: "acidity_g_per_100ml", unit: "g / 100 mL" },
  wine: { field: "strength_percent_vol", unit: "% vol" },
  syrup: { field: "sugar_percent_mass", unit: "%" },
  juice: { field: "sugar_percent_mass", unit: "%" },
  honey: { field: "water_percent_mass", unit: "%" },
} as const satisfies Partial<Record<IngredientKind, { field: keyof StockItem; unit: string }>>;

export type LabelledKind = keyof typeof labelFigure;

export function isLabelled(kind: string): kind is LabelledKind {
  return kind in labelFigure;
}

/** One of the liquids a preparation is poured from: a bottle of the shelf, or another with its label read off. */
export class Bottle {
  supply = $state("");
  readonly figure: PlainEntry;

  constructor(
    readonly kind: LabelledKind,
    readonly shelf: Supply[],
  ) {
    this.figure = new PlainEntry(labelFigure[kind].unit);
    this.supply = shelf.find((supply) => supply.left_ml > 0)?.id ?? "other";
  }

  get item(): StockItem | null {
    const supply = this.shelf.find(({ id }) => id === this.supply);
    if (supply) return { ...supply.item, supply: supply.id, available_ml: supply.left_ml };
    const amount = this.figure.amount;
    return amount === null ? null : { kind: this.kind, [labelFigure[this.kind].field]: amount };
  }
}

/** A jar being worked out: what goes in, what was moved, and what the core proposes for it. */
export class Composer {
  readonly form = new Form();
  readonly jar: VolumeEntry;
  lots = $state.raw<LotLine[] | null>(null);
  chosen = $state.raw<ChosenLot[]>([]);
  choosing = $state(false);
  preparations = $state.raw<PreparationLine[]>([]);
  preparation = $state("");
  bottles = $state.raw<Bottle[]>([]);
  moved = $state.raw<Partial<Record<ControlName, number>>>({});
  proposal = $state.raw<Proposal | null>(null);
  refusal = $state.raw<Failure | null>(null);
  private supplies: Supply[] = [];
  private asking = false;
  private stale = false;

  constructor(private readonly book: Book) {
    this.jar = new VolumeEntry(book.units);
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
      this.book.desk.ask("lot.list", {}),
      this.book.desk.ask("preparation.list", {}),
      this.book.desk.ask("supply.list", {}),
    ]);
    this.lots = lots;
    this.preparations = preparations;
    this.supplies = supplies;
  }

  /** Preparations that suit every chosen lot as it is, fresh or dried. */
  get fitting(): PreparationLine[] {
    const states = this.chosen.map(({ line }) => line.state);
    if (states.length === 0) return [];
    return this.preparations.filter((one) => states.every((state) => one[state]));
  }

  has(line: LotLine): boolean {
    return this.chosen.some((one) => one.line.lot.id === line.lot.id);
  }

  toggle(line: LotLine): void {
    this.chosen = this.has(line)
      ? this.chosen.filter((one) => one.line.lot.id !== line.lot.id)
      : [...this.chosen, { line, mass: new MassEntry(this.book.units, line.left_g) }];
    // What was moved for another herb says nothing about this one.
    this.moved = {};
    if (!this.fitting.some((one) => one.key === this.preparation)) this.prepare("");
    void this.recompose();
  }

  prepare(key: string): void {
    this.preparation = key;
    this.moved = {};
    this.proposal = null;
    const liquids = this.preparations.find((one) => one.key === key)?.liquids ?? [];
    this.bottles = liquids.filter(isLabelled).map(
      (kind) =>
        new Bottle(
          kind,
          this.supplies.filter((supply) => supply.item.kind === kind),
        ),
    );
    void this.recompose();
  }

  move(control: ControlName, value: number): void {
    this.moved = { ...this.moved, [control]: value };
    void this.recompose();
  }

  get composition(): Composition | null {
    const plants = this.chosen.flatMap(({ line, mass }) => {
      const grams = mass.amount;
      if (!grams) return [];
      return [{ lot: line.lot, herb: line.herb, part: line.part, state: line.state, mass_g: grams }];
    });
    if (!this.preparation || plants.length === 0) return null;
    const bottles = this.bottles.flatMap((bottle) => bottle.item ?? []);
    const jar = this.jar.amount;
    return {
      preparation: this.preparation,
      plants,
      stock: [{ kind: "water" }, ...bottles],
      ...this.moved,
      ...(jar ? { jar_ml: jar } : {}),
    };
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

  async pour(name: string, place: string, note: string): Promise<void> {
    const composition = this.composition;
    if (!composition) return;
    await this.form.send(async () => {
      const jar = await this.book.jars.pour({
        composition,
        ...(name.trim() ? { name: name.trim() } : {}),
        ...(place.trim() ? { place: place.trim() } : {}),
        ...(note.trim() ? { note: note.trim() } : {}),
      });
      this.book.route.replace(`/jar/${jar.id}`);
    });
  }
}
