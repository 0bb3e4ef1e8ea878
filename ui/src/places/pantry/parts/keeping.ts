import type { Interval } from "../../../api";
import { plain } from "../../../format/number";
import { words } from "../../../words";

const DAYS_IN_A_MONTH = 30.44;

/** How long it keeps once strained, in months, or in days where that is less than two of them. */
export function keepsFor(days: Interval | null): string | null {
  if (!days) return null;
  const months = (n: number) => plain(Math.round(n / DAYS_IN_A_MONTH), 0);
  if (days.low < 2 * DAYS_IN_A_MONTH - 1) return words.jar.days(plain(days.low, 0), plain(days.high, 0));
  return words.jar.months(months(days.low), months(days.high));
}
