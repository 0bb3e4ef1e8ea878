import { expect, test } from "vitest";
import type { HarvestCard } from "../../../api";
import { runsOf } from "./runs";

const picked = (...at: string[]) => at.map((picked_at) => ({ picked_at }) as HarvestCard);
const told = (harvests: readonly HarvestCard[]) => runsOf(harvests).map(({ key, named, from, harvests }) => [key, named, from, harvests.length]);

test("a month is named once and stands in dozens", () => {
  const month = Array.from({ length: 14 }, () => "2026-07-02T08:00:00+02:00");
  expect(told(picked("2026-08-01T08:00:00+02:00", ...month))).toEqual([
    ["2026-08 0", true, 0, 1],
    ["2026-07 0", true, 1, 12],
    ["2026-07 1", false, 13, 2],
  ]);
});

test("a harvest that comes before the others leaves each run its key", () => {
  const before = picked(...Array.from({ length: 12 }, () => "2026-07-02T08:00:00+02:00"));
  const after = [...picked("2026-07-03T08:00:00+02:00"), ...before];
  expect(told(before)).toEqual([["2026-07 0", true, 0, 12]]);
  expect(told(after)).toEqual([
    ["2026-07 0", true, 0, 12],
    ["2026-07 1", false, 12, 1],
  ]);
});

test("a month that comes again after a journey is another run", () => {
  // The latest first: by the clock of the place the second of them was picked in August.
  const journey = picked("2026-07-31T23:50:00-07:00", "2026-08-01T00:30:00+02:00", "2026-07-31T20:00:00+02:00");
  const keys = runsOf(journey).map(({ key }) => key);
  expect(keys).toEqual(["2026-07 0", "2026-08 0", "2026-07 1"]);
});
