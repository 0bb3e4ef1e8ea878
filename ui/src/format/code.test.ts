import { expect, test } from "vitest";
import { addressOfCode } from "./code";

test("a code leads to its lot, and the code of a card to taking its recipe in", () => {
  expect(addressOfCode("tavo-472")).toBe("/lot/tavo-472");
  expect(addressOfCode("trugbook:lot/tavo-472?name=Sage")).toBe("/lot/trugbook%3Alot%2Ftavo-472%3Fname%3DSage");
  for (const link of ["trugbook:recipe/1/MY", " TRUGBOOK:RECIPE/1/MY", "Trugbook://recipe/1/MY\n"]) {
    expect(addressOfCode(link)).toBe(`/take-in/${encodeURIComponent(link)}`);
  }
});
