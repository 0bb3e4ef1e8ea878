import { Failure } from "../../../../api";
import { MILLILITRES, type Units } from "../../../../format/amount";
import { words } from "../../../../words";
import { PlainEntry, VolumeEntry } from "../../../../state/form.svelte";

/** So many bottles of one size. */
export class Row {
  readonly size: VolumeEntry;
  readonly count = new PlainEntry("", 0);

  /** A size of one's own is typed; a usual one stands as it is. */
  constructor(
    units: Units,
    readonly usual: number | null = null,
  ) {
    this.size = new VolumeEntry(units, usual ?? undefined);
  }

  get bottles(): number {
    return this.count.amount ?? 0;
  }

  get millilitres(): number {
    return (this.size.amount ?? 0) * this.bottles;
  }
}

/** The bottles that the strained liquid of a jar is put into. */
export class Filling {
  rows = $state.raw<Row[]>([]);

  constructor(private readonly units: Units) {
    // The bottles that are sold for it: by the fluid ounce here, by tens of millilitres there.
    const usual = units === "us" ? [1, 2, 4].map((ounces) => ounces * MILLILITRES["fl oz"]) : [30, 50, 100];
    this.rows = usual.map((size) => new Row(units, size));
  }

  add(): void {
    this.rows = [...this.rows, new Row(this.units)];
  }

  get bottles(): number {
    return this.rows.reduce((sum, row) => sum + row.bottles, 0);
  }

  get millilitres(): number {
    return this.rows.reduce((sum, row) => sum + row.millilitres, 0);
  }

  get wrong(): Failure[] {
    const w = words.bottle;
    const faults = this.rows.flatMap((row, i) => [
      ...row.count.wrong(`bottles[${i}].count`, w.count(row.size.text), false),
      ...(row.bottles > 0 || !row.size.empty ? row.size.wrong(`bottles[${i}].ml`, w.size, true) : []),
    ]);
    if (faults.length > 0) return faults;
    return this.bottles > 0 ? [] : [new Failure("missing", "bottles", w.noneChosen)];
  }

  get request(): { ml: number; count: number }[] {
    return this.rows.filter((row) => row.bottles > 0).map((row) => ({ ml: row.size.amount ?? 0, count: row.bottles }));
  }
}
