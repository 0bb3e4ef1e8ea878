import type { Interval } from "../api";
import { words } from "../words";
import { span } from "./number";

/** "4–9 : 1", fresh to dry, on one line that never breaks within it. */
export function ratio(interval: Interval): string {
  const { low, high, value, sure } = span(interval);
  return words.herb.ratio(sure ? value : `${low}\u2060–\u2060${high}`);
}
