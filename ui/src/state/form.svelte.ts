import { tick } from "svelte";
import { Failure } from "../api";
import { GRAMS, MILLILITRES, type MassUnit, type Units, type VolumeUnit } from "../format/amount";
import { typed, typedNumber } from "../format/number";
import { words } from "../words";

/** One form on its way to the core: what is wrong with it, and whether it is being sent. */
export class Form {
  failures = $state.raw<Failure[]>([]);
  /** What the core refuses of what stands there now, before anything was sent. */
  standing = $state.raw<Failure | null>(null);
  busy = $state(false);

  failureOf(field: string): string | null {
    const known = [...this.faults, ...(this.standing ? [this.standing] : [])];
    return known.find((failure) => failure.field === field)?.message ?? null;
  }

  /** A figure that the core asks about before it takes it; no fault. */
  get odd(): Failure | undefined {
    return this.failures.find(({ code }) => code === "confirm_odd");
  }

  get faults(): Failure[] {
    return this.failures.filter(({ code }) => code !== "confirm_odd");
  }

  has(code: string): boolean {
    return this.failures.some((failure) => failure.code === code);
  }

  /** Sends unless `wrong` names faults; whatever the core refuses is shown at its field. */
  async send(act: () => Promise<void>, wrong: Failure[] = []): Promise<void> {
    if (this.busy) return;
    this.failures = [];
    // An error that comes back unchanged must still take the focus again.
    await tick();
    if (wrong.length > 0) {
      this.failures = wrong;
      return;
    }
    this.busy = true;
    try {
      await act();
    } catch (thrown) {
      if (!(thrown instanceof Failure)) throw thrown;
      this.failures = [thrown];
    } finally {
      this.busy = false;
    }
  }
}

/** A number being typed, in a unit the maker chose. */
class Entry<U extends string> {
  text = $state("");
  unit: U = $state() as U;

  constructor(
    readonly units: readonly U[],
    private readonly sizes: Record<U, number>,
    unit: U,
    text = "",
  ) {
    this.unit = unit;
    this.text = text;
  }

  get empty(): boolean {
    return this.text.trim() === "";
  }

  /** In the wire's unit; null when what is typed is no number. */
  get amount(): number | null {
    const number = typedNumber(this.text);
    return number === null ? null : number * this.sizes[this.unit];
  }

  /** The last place that was typed, in the wire's unit: as fine as the scale that showed it. */
  get step(): number {
    const [, decimals = ""] = /[.,](\d*)$/.exec(this.text.trim()) ?? [];
    return this.sizes[this.unit] / 10 ** decimals.length;
  }

  /** Writes an amount of the wire's unit into the field. */
  set(amount: number): void {
    this.text = typed(amount / this.sizes[this.unit]);
  }

  /** What is wrong with it as the answer to `field`, in the words of its label. */
  wrong(field: string, label: string, required: boolean): Failure[] {
    if (this.empty) return required ? [new Failure("missing", field, words.failure.missing(label))] : [];
    if (this.amount === null) return [new Failure("not_a_number", field, words.failure.notNumber(label))];
    if (this.amount < 0 || (required && this.amount === 0)) {
      return [new Failure("not_positive", field, words.failure.notPositive(label))];
    }
    return [];
  }
}

export type NumberEntry = Pick<Entry<string>, "text" | "unit" | "units">;

export class MassEntry extends Entry<MassUnit> {
  constructor(units: Units, grams?: number) {
    const unit: MassUnit = units === "us" ? "oz" : "g";
    super(["g", "kg", "oz", "lb"], GRAMS, unit, grams === undefined ? "" : typed(grams / GRAMS[unit]));
  }
}

export class VolumeEntry extends Entry<VolumeUnit> {
  constructor(units: Units, millilitres?: number) {
    const unit: VolumeUnit = units === "us" ? "fl oz" : "mL";
    const text = millilitres === undefined ? "" : typed(millilitres / MILLILITRES[unit]);
    super(["mL", "L", "fl oz"], MILLILITRES, unit, text);
  }
}

/** A temperature, which may be below zero. */
export class DegreesEntry {
  readonly units = ["°C", "°F"] as const;
  text = $state("");
  unit: string = $state("°C");

  constructor(units: Units, celsius?: number) {
    this.unit = units === "us" ? "°F" : "°C";
    if (celsius !== undefined) this.text = typed(this.unit === "°F" ? celsius * 1.8 + 32 : celsius);
  }

  get empty(): boolean {
    return this.text.trim() === "";
  }

  /** In °C; null when what is typed is no number. */
  get amount(): number | null {
    const number = typedNumber(this.text);
    return number !== null && this.unit === "°F" ? (number - 32) / 1.8 : number;
  }

  wrong(field: string, label: string, required: boolean): Failure[] {
    if (this.empty) return required ? [new Failure("missing", field, words.failure.missing(label))] : [];
    return this.amount === null ? [new Failure("not_a_number", field, words.failure.notNumber(label))] : [];
  }
}

/** A number whose unit is fixed: per cent, square metres. */
export class PlainEntry extends Entry<string> {
  constructor(unit: string, value?: number) {
    super([unit], { [unit]: 1 }, unit, value === undefined ? "" : typed(value));
  }
}
