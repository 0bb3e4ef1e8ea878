import { expect, test } from "vitest";
import type { Calendar, PickingRow } from "../api";
import { speaking } from "../../tests/speaking";

await speaking("en");
const { daysOfYear, ownSaid, publishedSaid, shiftSaid, windows } = await import("./picking");

const spans = (months: [number, number][]) => months.map(([from_month, to_month]) => ({ from_month, to_month }));
const row = (months: [number, number][], own: PickingRow["own"] = []): PickingRow => ({
  herb: "yarrow",
  common: "Yarrow" as PickingRow["common"],
  part: "flowering tops",
  published: [],
  months: spans(months),
  own,
  ready: null,
});
const calendar = (weeks: number | null, is_shifted = weeks !== null): Calendar => ({
  hemisphere: "north",
  shift: weeks === null ? null : { weeks, weeks_low: weeks - 0.6, weeks_high: weeks + 0.6, years: 3, plants: 4 },
  is_shifted,
  rows: [],
});

test("a leap day stands where the day before it stands", () => {
  expect(daysOfYear(["2024-02-29", "2024-03-01", "2026-12-31", "2026-12-31"])).toEqual([58, 59, 364]);
});

test("months lie where they are printed, and a clear shift alone moves them", () => {
  const summer = row([[6, 8]]);
  expect(windows(summer, calendar(null))).toEqual([{ from: 151, long: 92 }]);
  expect(windows(summer, calendar(2))).toEqual([{ from: 165, long: 92 }]);
  expect(windows(summer, calendar(2, false))).toEqual([{ from: 151, long: 92 }]);
});

test("months that run over the new year are drawn at both ends of it", () => {
  expect(windows(row([[10, 4]]), calendar(null))).toEqual([
    { from: 273, long: 92 },
    { from: 0, long: 120 },
  ]);
  expect(windows(row([[1, 12]]), calendar(null))).toEqual([{ from: 0, long: 365 }]);
  expect(windows(row([[1, 1]]), calendar(-1))).toEqual([
    { from: 358, long: 7 },
    { from: 0, long: 24 },
  ]);
});

test("a calendar is said with its stage, and one's own days by their years", () => {
  const printed = (months: [number, number][]) => publishedSaid({ stage: "in flower", months: spans(months), source: null, status: "confirmed" });
  expect(printed([])).toBe("in flower");
  expect(printed([[4, 4], [8, 10]])).toBe("in flower: April and August to October");
  expect(printed([[1, 12]])).toBe("in flower: all year");
  expect(ownSaid(row([[6, 8]]))).toBe("");
  const one = { year: 2024, days: ["2024-06-20", "2024-09-02"] };
  expect(ownSaid(row([[6, 8]], [one]))).toMatch(/^In 2024 you picked it from .*Jun.* to .*Sep.*\.$/);
  const two = { year: 2025, days: ["2025-06-14"] };
  expect(ownSaid(row([[6, 8]], [two, one]))).toMatch(/^In 2 years you picked it between .*14.* and .*2.*\.$/);
});

test("a shift is claimed where it is clear, to both sides", () => {
  expect(shiftSaid(calendar(null))).toMatch(/^Once you have picked two herbs or more in two years/);
  expect(shiftSaid(calendar(0.3, false))).toMatch(/no clear difference/);
  expect(shiftSaid(calendar(2))).toMatch(/^You pick about 2 weeks later than published \(1 to 3\)\. Learned from 3 years/);
  expect(shiftSaid(calendar(-1))).toMatch(/^You pick about one week earlier than published \(0 to 2\)\./);
});
