import { known, plain, span, type Interval, type Span } from "./number";

export type Units = "metric" | "us";
export type MassUnit = "g" | "kg" | "oz" | "lb";
export type VolumeUnit = "mL" | "fl oz" | "L";

/** Grams in one of each (the avoirdupois pound is 453.59237 g by definition). */
export const GRAMS: Record<MassUnit, number> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };
/** Millilitres in one of each (the US fluid ounce is 29.5735295625 mL by definition). */
export const MILLILITRES: Record<VolumeUnit, number> = { mL: 1, L: 1000, "fl oz": 29.5735295625 };
/** Millilitres in a metric spoon; from memory. */
export const SPOONS = { tea: 5, table: 15 } as const;

export type Amount = { value: string; unit: string };
export type AmountSpan = Span & { unit: string };

function massUnit(grams: number, units: Units): MassUnit {
  if (units === "us") return grams >= 2 * GRAMS.lb ? "lb" : "oz";
  return grams >= 10_000 ? "kg" : "g";
}

function volumeUnit(millilitres: number, units: Units): VolumeUnit {
  if (units === "us") return "fl oz";
  return millilitres >= 10_000 ? "L" : "mL";
}

/** An interval in another unit, or of a share of it. */
export function scaled(interval: Interval, by: number): Interval {
  return { low: interval.low / by, value: interval.value / by, high: interval.high / by };
}

/** A mass as it was weighed. */
export function mass(grams: number, units: Units): Amount {
  const unit = massUnit(grams, units);
  const value = grams / GRAMS[unit];
  return { value: plain(value, unit === "g" ? 1 : 2), unit };
}

/** A mass to measure out: a kitchen scale shows no more. */
export function pouredMass(grams: number, units: Units): Amount {
  const unit = massUnit(grams, units);
  return { value: known(grams / GRAMS[unit], true), unit };
}

/** A mass that is only known within an interval. */
export function massSpan(grams: Interval, units: Units): AmountSpan {
  const unit = massUnit(grams.value, units);
  return { ...span(scaled(grams, GRAMS[unit]), true), unit };
}

/** A volume to measure out. */
export function volume(millilitres: number, units: Units): Amount {
  const unit = volumeUnit(millilitres, units);
  return { value: known(millilitres / MILLILITRES[unit], true), unit };
}

export function volumeSpan(millilitres: Interval, units: Units): AmountSpan {
  const unit = volumeUnit(millilitres.value, units);
  return { ...span(scaled(millilitres, MILLILITRES[unit]), true), unit };
}

/** Number and unit on one line that never breaks between them. */
export function joined({ value, unit }: Amount): string {
  return `${value}\u00a0${unit}`;
}

/** "33–50 g", or one number where both ends read the same. */
export function joinedSpan({ low, high, unit, sure }: AmountSpan): string {
  return sure ? `${low}\u00a0${unit}` : `${low}–${high}\u00a0${unit}`;
}
