import type { Interval } from "../api";
import { locale } from "../words";
import { once } from "./once";

export type { Interval } from "../api";

/** The decimal mark of the reader's locale. */
export const decimalMark = once(
  () => new Intl.NumberFormat(locale).formatToParts(1.5).find((part) => part.type === "decimal")?.value ?? ".",
);

const formats = new Map<number, Intl.NumberFormat>();

/** A number with at most `decimals` places, in the reader's locale; four digits stand together, as in the core. */
export function plain(value: number, decimals = 1): string {
  let format = formats.get(decimals);
  if (!format) {
    format = new Intl.NumberFormat(locale, { maximumFractionDigits: decimals, useGrouping: "min2" });
    formats.set(decimals, format);
  }
  return format.format(value === 0 ? 0 : value);
}

/** A number cut to its place; halves go away from nothing, as in the core. */
function rounded(value: number, places: number): string {
  const step = 10 ** Math.abs(places);
  const size = places < 0 ? Math.round(Math.abs(value) / step) * step : Math.round(Math.abs(value) * step) / step;
  return plain(size === 0 ? 0 : Math.sign(value) * size, Math.max(0, places));
}

/** The largest power of ten that is not above a number. */
function powerOfTen(number: number): number {
  return Number(number.toExponential().split("e")[1]);
}

/**
 * Decimal places by the one rule of digits, which the core states (`words/src/digits.rs`) and a table holds both to;
 * less than none where tens are told. `weighed` are grams, millilitres and their like.
 */
function places({ low, high, value }: Interval, weighed: boolean): number {
  const size = Math.abs(value);
  if (high > low) {
    const third = powerOfTen((high - low) / 3);
    return Math.min(2, -Math.min(third, size > 0 ? powerOfTen(size) : third));
  }
  if (weighed) return size < 20 ? 1 : 0;
  if (size <= 1) return 2;
  return size < 100 ? 1 : 0;
}

export type Span = { value: string; low: string; high: string; sure: boolean };

/** The three numbers of an interval, all cut to the digits it deserves. */
export function span(interval: Interval, weighed = false): Span {
  const to = places(interval, weighed);
  const [low, value, high] = [interval.low, interval.value, interval.high].map((n) => rounded(n, to));
  return { value: value!, low: low!, high: high!, sure: low === high };
}

/** A number that is known, cut to the digits it deserves. */
export function known(value: number, weighed = false): string {
  return span({ low: value, value, high: value }, weighed).value;
}

/** A number as a field holds it: the reader's decimal mark, no grouping. */
export function typed(value: number): string {
  return new Intl.NumberFormat(locale, { maximumFractionDigits: 2, useGrouping: false }).format(value);
}

/**
 * What a person typed as a decimal, with a comma or a point; null when it is no number.
 * Of two different marks the last is the decimal one. A single mark that groups in the reader's locale, with exactly
 * three digits behind it, groups; any other single mark is a decimal one in every language.
 */
export function typedNumber(text: string): number | null {
  const trimmed = text.trim().replace(/[\s\u00a0\u202f'\u2019]/g, "");
  if (trimmed === "") return null;
  const own = decimalMark();
  const other = own === "," ? "." : ",";
  const groupsAlone = new RegExp(`^[+-]?[1-9]\\d{0,2}(\\${other}\\d{3})+$`).test(trimmed);
  const mark = groupsAlone ? own : trimmed.lastIndexOf(",") > trimmed.lastIndexOf(".") ? "," : ".";
  const point = trimmed.replaceAll(mark === "," ? "." : ",", "").replace(mark, ".");
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(point)) return null;
  const value = Number(point);
  return Number.isFinite(value) ? value : null;
}

/** A share or a strength with its unit, as an interval that may be sure. */
export function percentSpan(interval: Interval, unit: string): Span & { unit: string } {
  return { ...span(interval), unit };
}
