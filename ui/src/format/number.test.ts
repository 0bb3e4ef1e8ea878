import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { speaking } from "../../tests/speaking";

async function numbers(tag: string) {
  await speaking(tag);
  return import("./number");
}

describe("what is typed", () => {
  // A single mark that the reader's language groups by, with three digits behind it, groups; any other is a decimal one.
  test.each([
    ["en", "1.234", 1.234],
    ["en", "1,234", 1234],
    ["en", "1,23", 1.23],
    ["en", "1,234.5", 1234.5],
    ["en", "1.234,5", 1234.5],
    ["en", "1,234,567", 1234567],
    ["en", "0,234", 0.234],
    ["de", "1.234", 1234],
    ["de", "1,234", 1.234],
    ["de", "1.23", 1.23],
    ["de", "1.234,5", 1234.5],
    ["de", "1,234.5", 1234.5],
    ["de", "0.234", 0.234],
    ["de", "12.345.678", 12345678],
    ["de-CH", "1’234.5", 1234.5],
    ["de-CH", "1.234", 1.234],
  ])("in %s %s is %d", async (tag, text, value) => {
    expect((await numbers(tag)).typedNumber(text)).toBe(value);
  });

  test.each(["en", "de"])("in %s spaces are nothing, and what is no number is none", async (tag) => {
    const { typedNumber } = await numbers(tag);
    expect(typedNumber(" 1 250 ")).toBe(1250);
    expect(typedNumber("2.5")).toBe(2.5);
    expect(typedNumber("-3")).toBe(-3);
    for (const text of ["", "  ", "g", "2 g", "1.2.3", "--1", "1e3", ".", ",", "Infinity"]) {
      expect(typedNumber(text), text).toBeNull();
    }
  });

  test.each(["en", "de", "de-CH"])("in %s a field reads back what it was filled with", async (tag) => {
    const { typed, typedNumber } = await numbers(tag);
    for (const value of [0, 0.05, 2.5, 999, 1234, 1234.5, 12345.67]) expect(typedNumber(typed(value))).toBe(value);
  });
});

describe("the one rule of digits", () => {
  // The same table that the core is held to.
  const table = new URL("../../../src-tauri/crates/words/data/digits.csv", import.meta.url);
  const [, ...rows] = readFileSync(table, "utf8").trim().split("\n");
  const cells = rows.map((row) => [...row.matchAll(/"([^"]*)"|([^,]+|(?<=,)(?=,))/g)].map(([, quoted, bare]) => quoted ?? bare ?? ""));

  test.each([
    ["en", 4, "to"],
    ["de", 5, "bis"],
  ] as const)("reads alike in %s", async (tag, column, to) => {
    const { span } = await numbers(tag);
    expect(cells.length).toBeGreaterThan(20);
    for (const row of cells) {
      const [value, low, high] = row.slice(0, 3).map(Number) as [number, number, number];
      const weighed = row[3] === "g" || row[3] === "mL";
      // From ten thousand on, grams are told in kilograms and millilitres in litres.
      const by = weighed && value >= 10_000 ? 1000 : 1;
      const cut = span({ value: value / by, low: low / by, high: high / by }, weighed);
      const said = cut.sure ? cut.value : `${cut.value} (${cut.low} ${to} ${cut.high})`;
      expect(said, row.join()).toBe(row[column]);
    }
  });
});
