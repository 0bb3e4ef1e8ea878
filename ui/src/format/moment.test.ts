import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { speaking } from "../../tests/speaking";

async function days(tag: string) {
  await speaking(tag);
  return import("./moment");
}

beforeEach(() => void vi.useFakeTimers({ now: new Date("2026-07-14T10:30:00"), toFake: ["Date"] }));
afterEach(() => void vi.useRealTimers());

describe("days", () => {
  test("a day of this year goes without it, another with it", async () => {
    const english = await days("en-GB");
    expect(english.shortDay("2026-06-05")).toBe("5\u00a0Jun");
    expect(english.shortDay("2025-06-05")).toBe("5\u00a0Jun 2025");
    const german = await days("de");
    expect(german.shortDay("2026-06-05")).toBe("5.\u00a0Juni");
    expect(german.shortDay("2025-06-05")).toBe("5.\u00a0Juni 2025");
  });

  test("no line breaks between a day and its month, whichever comes first", async () => {
    const told = async (tag: string) => {
      const { anyYear, weekDay, dayAndTime } = await days(tag);
      return [anyYear("2019-06-05"), weekDay("2026-12-05"), dayAndTime("2026-06-05T09:40:00").split(",")[0]];
    };
    expect(await told("de")).toEqual(["5.\u00a0Juni", "Samstag, 5.\u00a0Dezember", "5.\u00a0Juni"]);
    expect(await told("en-GB")).toEqual(["5\u00a0Jun", "Saturday 5\u00a0December", "5\u00a0Jun"]);
    expect(await told("en-US")).toEqual(["Jun\u00a05", "Saturday, December\u00a05", "Jun\u00a05"]);
  });

  test("today and what is past has come, tomorrow has not", async () => {
    const { hasCome } = await days("en");
    expect([hasCome("2026-07-13"), hasCome("2026-07-14"), hasCome("2026-07-15")]).toEqual([true, true, false]);
  });

  test("days are counted by the calendar, whatever the hour", async () => {
    const { daysBetween } = await days("en");
    expect(daysBetween("2026-06-23T23:50:00+02:00", "2026-06-24T00:10:00+02:00")).toBe(1);
    expect(daysBetween("2026-06-23T08:00:00+02:00", "2026-07-21")).toBe(28);
    expect(daysBetween("2026-06-23", "2026-06-23T23:00:00+02:00")).toBe(0);
  });

  test("a sentence of the core has its bare dates told, and no number parted from its unit", async () => {
    const { withDays } = await days("en-GB");
    expect(withDays("Strain on 2026-07-20; 250 mL at 40 % vol.")).toBe("Strain on 20\u00a0Jul; 250\u00a0mL at 40\u00a0%\u00a0vol.");
  });

  test("a moment in a field keeps this device's own offset on the wire", async () => {
    const { fieldMoment, wireMoment } = await days("en");
    const at = new Date("2026-07-14T09:05:00Z");
    expect(wireMoment(fieldMoment(at))).toMatch(/^2026-07-1[345]T\d\d:\d\d:00[+-]\d\d:\d\d$/);
    expect(new Date(wireMoment(fieldMoment(at))).getTime()).toBe(at.getTime());
  });
});
