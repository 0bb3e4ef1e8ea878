import { words } from "../words";
import { plain, type Interval } from "./number";

/** Hours left in the coarsest unit that is still true, hours up to two days, then days; the range in the same unit. */
export function hoursLeft({ low, value, high }: Interval): { about: string; range: string } {
  const w = words.rack;
  const [unit, some, upTo] = high <= 48 ? [1, w.someHours, w.upToHours] : [24, w.someDays, w.upToDays];
  const [from, middle, to] = [low / unit, value / unit, high / unit].map(Math.round) as [number, number, number];
  if (value < 1 && to > 0) return { about: w.perhapsNow, range: upTo(to) };
  if (to === 0) return { about: w.overdue, range: "" };
  const range = from === 0 ? w.upTo(plain(to, 0)) : `${plain(from, 0)}–${plain(to, 0)}`;
  return { about: some(middle), range: from === to ? "" : range };
}
