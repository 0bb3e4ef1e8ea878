import { Failure, type Composition, type Controls, type IngredientKind, type LotLine, type PreparationLine, type Proposal, type StockItem, type Supply } from "../api";
import { Form, MassEntry, VolumeEntry } from "./form.svelte";
import { Label } from "./label.svelte";
import type { Book } from "./index";

export type ControlName = keyof Controls;
export type ChosenLot = { line: LotLine; mass: MassEntry };

/** One of the liquids a preparation is poured from: a bottle of the shelf, or another with its label read off. */
export class Bottle {
  supply = $state("");
  readonly label: Label;

  constructor(
    readonly kind: IngredientKind,
    readonly shelf: Supply[],
  ) {
    this.label = new Label({ kind });
    this.supply = shelf.find((supply) => supply.left_ml > 0)?.id ?? "other";
  }

  get item(): StockItem | null {
    const supply = this.shelf.find(({ id }) => id === this.supply);
    return supply ? { ...supply.item, supply: supply.id, available_ml: supply.left_ml } : this.label.item;
  }
}

// Every kitchen has these, and nothing on them needs reading.
const atHand: readonly string[] = ["water", "sugar"];

/** A jar being worked out: what goes in, what was moved, and what the core proposes for it. */
export class Composer {
  readonly form = new Form();
  readonly jar: VolumeEntry;
  lots = $state.raw<LotLine[] | null>(null);
  chosen = $state.raw<ChosenLot[]>([]);
  choosing = $state(false);
  preparations = $state.raw<PreparationLine[]>([]);
  preparation = $state("");
  choosingPreparation = $state(true);
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
    const kinds = liquids.filter((kind) => !atHand.includes(kind)) as IngredientKind[];
    this.bottles = kinds.map((kind) => {
      const shelf = this.supplies.filter((supply) => supply.item.kind === kind);
      return new Bottle(kind, shelf);
    });
    this.choosingPreparation = key === "";
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
    const liquids = this.preparations.find((one) => one.key === this.preparation)?.liquids ?? [];
    const kitchen = atHand.filter((kind) => liquids.includes(kind)) as IngredientKind[];
    const jar = this.jar.amount;
    return {
      preparation: this.preparation,
      plants,
      stock: [...kitchen.map((kind) => ({ kind })), ...bottles],
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
