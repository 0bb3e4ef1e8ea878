import { expect, test } from "vitest";
import { speaking } from "../../tests/speaking";

test("a list is joined as the language joins it", async () => {
  await speaking("de");
  const { listed } = await import("./list");
  expect([[], ["Blatt"], ["Blatt", "leaf"], ["a", "b", "c"]].map(listed)).toEqual(["", "Blatt", "Blatt und leaf", "a, b und c"]);
});
