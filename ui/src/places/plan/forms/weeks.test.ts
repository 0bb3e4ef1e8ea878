import { describe, expect, test } from "vitest";
import type { DueLine } from "../../../api";
import { after, endOf, gathered, weekOf, weeks, type Standing } from "./weeks";

const TODAY = "2026-12-02"; // a Wednesday

const jar = (name: string, due_from: string, due_to: string): Standing => ({ id: name, name, code: name, due_from, due_to });
const due = (what: DueLine["what"], id: string, on: string) =>
  ({ what, id, on, harm: 1, noun: "jar", title: id, text: "", overdue_days: 0, at: null, choices: [] }) as unknown as DueLine;

describe("jars to strain", () => {
  test("go on one day where their days overlap, the first that suits all of them", () => {
    const jars = [jar("a", "2026-12-01", "2026-12-20"), jar("b", "2026-12-05", "2026-12-12"), jar("c", "2026-12-08", "2026-12-30")];
    expect(gathered(jars, TODAY).map(({ day, jars }) => [day, jars.map(({ id }) => id)])).toEqual([["2026-12-08", ["b", "a", "c"]]]);
  });

  test("keep to their own days: no day lies outside those of a jar that goes on it", () => {
    const jars = [jar("a", "2026-12-03", "2026-12-05"), jar("b", "2026-12-06", "2026-12-09"), jar("c", "2026-12-04", "2026-12-30"), jar("d", "2026-12-09", "2026-12-10")];
    const days = gathered(jars, TODAY);
    expect(days.map(({ day }) => day)).toEqual(["2026-12-04", "2026-12-09"]);
    for (const { day, jars } of days) {
      for (const { due_from, due_to } of jars) expect(day >= due_from && day <= due_to).toBe(true);
    }
    expect(days.flatMap(({ jars }) => jars.map(({ id }) => id)).toSorted()).toEqual(["a", "b", "c", "d"]);
  });

  test("whose days are over go today, with all that may be strained by now", () => {
    const jars = [jar("late", "2026-11-01", "2026-11-20"), jar("ready", "2026-11-25", "2026-12-25"), jar("young", "2026-12-03", "2026-12-25")];
    expect(gathered(jars, TODAY).map(({ day, jars }) => [day, jars.map(({ id }) => id)])).toEqual([
      [TODAY, ["late", "ready"]],
      ["2026-12-03", ["young"]],
    ]);
  });

  test("are read by the day of their moment", () => {
    expect(gathered([jar("a", "2026-12-04T23:30:00+01:00", "2026-12-05T23:30:00+01:00")], TODAY)[0]?.day).toBe("2026-12-04");
  });
});

test("a week begins on the day that its reader's weeks begin with", () => {
  expect([weekOf("2026-12-02", 1), weekOf("2026-12-02", 7), weekOf("2026-11-29", 7), weekOf("2026-11-29", 1)]).toEqual([
    "2026-11-30",
    "2026-11-29",
    "2026-11-29",
    "2026-11-23",
  ]);
  expect([endOf("2026-11-30"), after("2026-11-30")]).toEqual(["2026-12-06", "2026-12-07"]);
});

test("what is overdue belongs to today, and jars that go together stand there alone", () => {
  const lines = [due("bin", "x", "2026-11-20"), due("strain", "a", "2026-12-03"), due("strain", "b", "2026-12-04"), due("strain", "alone", "2026-12-20"), due("check", "y", "2026-12-09")];
  const jars = [jar("a", "2026-12-03", "2026-12-15"), jar("b", "2026-12-04", "2026-12-15"), jar("alone", "2026-12-20", "2026-12-25")];
  const told = weeks(lines, jars, TODAY, 1).map(({ start, days }) => [start, days.map(({ day, lines, together }) => [day, lines.map(({ id }) => id), together.map(({ id }) => id)])]);
  expect(told).toEqual([
    ["2026-11-30", [[TODAY, ["x"], []], ["2026-12-04", [], ["a", "b"]]]],
    ["2026-12-07", [["2026-12-09", ["y"], []]]],
    ["2026-12-14", [["2026-12-20", ["alone"], []]]],
  ]);
});
