import type { HarvestCard } from "../../../api";

// A dozen fills its rows with two, three or four beside each other.
const STRETCH = 12;

/** Harvests of a month that stand one after the other, a dozen at most. */
export type Run = {
  /** Stays when a harvest comes before it, so that a list that grows at its top is not drawn anew. */
  key: string;
  month: string;
  /** Whether the month's name stands above it. */
  named: boolean;
  /** How many harvests stand before it. */
  from: number;
  harvests: HarvestCard[];
};

/** The garden's list, the latest first, in runs. */
export function runsOf(harvests: readonly HarvestCard[]): Run[] {
  const all: Run[] = [];
  const counts = new Map<string, number>();
  harvests.forEach((harvest, from) => {
    // The month as it was where it was picked, so that a journey moves no harvest; after one a month may come twice.
    const month = harvest.picked_at.slice(0, 7);
    const last = all.at(-1);
    const named = month !== last?.month;
    if (!named && last && last.harvests.length < STRETCH) last.harvests.push(harvest);
    else {
      const nth = counts.get(month) ?? 0;
      counts.set(month, nth + 1);
      all.push({ key: `${month} ${nth}`, month, named, from, harvests: [harvest] });
    }
  });
  return all;
}
