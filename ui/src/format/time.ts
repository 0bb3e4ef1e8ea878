import { words } from "../words";
import { plain, type Interval } from "./number";

/** Hours left as a range in the coarsest unit that is still true: hours up to two days, then days. */
export function hoursLeft({ low, high }: Interval): string {
  const w = words.rack;
  const [unit, said, upTo] = high <= 48 ? [1, w.hours, w.upToHours] : [24, w.daysLeft, w.upToDays];
  const [from, to] = [Math.round(low / unit), Math.ceil(high / unit)];
  return from === 0 ? upTo(plain(to, 0)) : said(plain(from, 0), plain(to, 0));
}
