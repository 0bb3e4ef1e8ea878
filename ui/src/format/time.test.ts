import { expect, test } from "vitest";
import { speaking } from "../../tests/speaking";

test.each([
  ["en", { low: 6, value: 12, high: 30 }, "about 12 hours", "6–30"],
  ["en", { low: 0.2, value: 1.2, high: 5 }, "about an hour", "up to 5"],
  ["en", { low: 0, value: 0.4, high: 1.2 }, "perhaps now", "up to 1 hour"],
  ["en", { low: 0, value: 0.2, high: 0.4 }, "could be dry already", ""],
  ["en", { low: 20, value: 26, high: 60 }, "about a day", "1–3"],
  ["en", { low: 48, value: 120, high: 240 }, "about 5 days", "2–10"],
  ["de", { low: 0, value: 0.4, high: 1.2 }, "vielleicht schon so weit", "bis 1 Stunde"],
  ["de", { low: 48, value: 120, high: 240 }, "etwa 5 Tage", "2–10"],
])("in %s %o is %s", async (tag, interval, about, range) => {
  await speaking(tag);
  const { hoursLeft } = await import("./time");
  expect(hoursLeft(interval)).toEqual({ about, range });
});
