import { expect, test } from "vitest";
import { speaking } from "../../tests/speaking";

test("a size is told as file managers tell it", async () => {
  await speaking("en");
  const { size } = await import("./size");
  expect([900, 1234, 2_560_000, 3_400_000_000].map(size)).toEqual(["1 kB", "1 kB", "2.6 MB", "3.4 GB"].map((text) => text.replace(" ", "\u00a0")));
});
