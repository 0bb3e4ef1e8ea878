import { expect, test } from "vitest";
import type { Status } from "../api";
import { speaking } from "../../tests/speaking";

test.each([
  ["en", "confirmed", "Tinctures; US Pharmacopoeia IX; 1916", "Confirmed: Tinctures; US Pharmacopoeia IX; 1916"],
  ["en", "practice", "common practice, no source", "Common practice, no source"],
  ["de", "practice", "allgemeine Praxis, ohne Quelle", "Allgemeine Praxis, ohne Quelle"],
  ["en", "memory", null, "Not checked against a source"],
] as [string, Status, string | null, string][])("in %s, %s by %s is told once", async (tag, status, source, told) => {
  await speaking(tag);
  const { sourced } = await import("./source");
  expect(sourced(status, source)).toBe(told);
});
