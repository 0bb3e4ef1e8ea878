import type { Calendar, MonthSpan, PickingRow, PublishedMonths } from "../api";
import { listed } from "./list";
import { anyYear, monthName, shortDay } from "./moment";
import { words } from "../words";

/** The day of the year on which each month begins, and the year's end; a leap day is the one before it. */
const BEGINS = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;
const YEAR = 365;

/** Where days of the calendar stand in a year of 365 days. */
export function daysOfYear(days: readonly string[]): number[] {
  const at = (text: string) => {
    const month = Number(text.slice(5, 7));
    return Math.min((BEGINS[month - 1] ?? 0) + Number(text.slice(8, 10)), BEGINS[month] ?? YEAR) - 1;
  };
  return [...new Set(days.map(at))];
}

/** This year, and how much of it has gone. */
export function today(): { year: number; share: number } {
  const now = new Date();
  const [at = 0] = daysOfYear([`0000-${String(now.getMonth() + 1).padStart(2, "0")}-${String(now.getDate()).padStart(2, "0")}`]);
  return { year: now.getFullYear(), share: (at + 0.5) / YEAR };
}

/** The spans of a row as they lie in a year, moved by a clear shift; one that runs over the new year is two. */
export function windows(row: PickingRow, calendar: Calendar): { from: number; long: number }[] {
  const moved = calendar.is_shifted && calendar.shift ? calendar.shift.weeks * 7 : 0;
  return row.months.flatMap(({ from_month: from, to_month: to }) => {
    const begins = BEGINS[from - 1] ?? 0;
    const long = (((BEGINS[to] ?? YEAR) - begins + YEAR - 1) % YEAR) + 1;
    const start = (((begins + moved) % YEAR) + YEAR) % YEAR;
    const first = Math.min(long, YEAR - start);
    return [{ from: start, long: first }, ...(long > first ? [{ from: 0, long: long - first }] : [])];
  });
}

/** "June to August". */
function span({ from_month: from, to_month: to }: MonthSpan): string {
  const w = words.picking;
  if ((to - from + 12) % 12 === 11) return w.allYear;
  return from === to ? monthName(from - 1) : w.span(monthName(from - 1), monthName(to - 1));
}

/** The days that stand first and last in the calendar, whatever their years. */
function ends(days: string[]): [string, string] {
  const inOrder = days.toSorted((one, other) => one.slice(5).localeCompare(other.slice(5)));
  return [inOrder[0] ?? "", inOrder.at(-1) ?? ""];
}

/** What one calendar prints: how far the plant is, and in which months. */
export function publishedSaid({ stage, months }: PublishedMonths): string {
  return months.length > 0 ? words.picking.published(stage, listed(months.map(span))) : stage;
}

/** One's own days in a sentence; nothing where there are none. */
export function ownSaid({ own }: PickingRow): string {
  const w = words.picking;
  const days = own.flatMap((one) => one.days);
  const [first, last] = ends(days);
  const [only] = own;
  if (!only) return "";
  if (days.length === 1) return w.ownDay(shortDay(first));
  return own.length === 1 ? w.ownYear(String(only.year), anyYear(first), anyYear(last)) : w.ownYears(own.length, anyYear(first), anyYear(last));
}

/** What the maker's own picks tell of this place, in a sentence. */
export function shiftSaid({ shift, is_shifted }: Calendar): string {
  const w = words.picking;
  if (!shift) return w.tooFew;
  if (!is_shifted) return w.agree(shift.years);
  const [near, far] = shift.weeks > 0 ? [shift.weeks_low, shift.weeks_high] : [-shift.weeks_high, -shift.weeks_low];
  const weeks = [Math.abs(shift.weeks), near, far] as const;
  const [about, least, most] = [Math.max(1, Math.round(weeks[0])), Math.floor(weeks[1]), Math.ceil(weeks[2])];
  return (shift.weeks > 0 ? w.later : w.earlier)(about, String(least), String(most), shift.years);
}
