import { locale } from "../words";
import { once } from "./once";

export type Interval = { low: number; value: number; high: number };

/** The decimal mark of the reader's locale. */
export const decimalMark = once(
  () => new Intl.NumberFormat(locale).formatToParts(1.5).find((part) => part.type === "decimal")?.value ?? ".",
);

const formats = new Map<number, Intl.NumberFormat>();

/** A number with at most `decimals` places, in the reader's locale. */
export function plain(value: number, decimals = 1): string {
  let format = formats.get(decimals);
  if (!format) {
    format = new Intl.NumberFormat(locale, { maximumFractionDigits: decimals });
    formats.set(decimals, format);
  }
  return format.format(value === 0 ? 0 : value);
}

function rounded(value: number, decimals: number): string {
  if (decimals >= 0) return plain(value, decimals);
  const step = 10 ** -decimals;
  return plain(Math.round(value / step) * step, 0);
}

/** Decimal places an interval deserves: its last digit stays above a tenth of its width. */
export function honestDecimals({ low, high, value }: Interval): number {
  const width = high - low;
  if (width > 0) return Math.min(2, -Math.floor(Math.log10(width / 3)));
  const size = Math.abs(value);
  if (size >= 100) return 0;
  return size >= 10 ? 1 : 2;
}

export type Span = { value: string; low: string; high: string; sure: boolean };

/** The three numbers of an interval, all cut to the digits it deserves. */
export function span(interval: Interval): Span {
  const decimals = honestDecimals(interval);
  const [low, value, high] = [interval.low, interval.value, interval.high].map((n) => rounded(n, decimals));
  return { value: value!, low: low!, high: high!, sure: low === high };
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
