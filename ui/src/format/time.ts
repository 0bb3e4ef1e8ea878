import { words } from "../words";
import { plain, type Interval } from "./number";

/** Hours left as a range in the coarsest unit that is still true: hours up to two days, then days. */
export function hoursLeft({ low, high }: Interval): string {
  if (high <= 48) return words.rack.hours(plain(Math.round(low), 0), plain(Math.ceil(high), 0));
  return words.rack.daysLeft(plain(Math.round(low / 24), 0), plain(Math.ceil(high / 24), 0));
}
