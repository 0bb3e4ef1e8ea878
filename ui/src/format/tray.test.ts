import { expect, test } from "vitest";
import { speaking } from "../../tests/speaking";

const plant = { common: "Peppermint", part: "leaf", code: "tavo-472" };

test.each([
  ["Peppermint leaf", false, "tavo-472"],
  ["Blue basket", true, "Blue basket"],
])("a tray called %s beside its plant: named is %s, and it is told by %s", async (name, named, told) => {
  await speaking("en");
  const { isNamed, trayName } = await import("./tray");
  expect([isNamed({ ...plant, name }), trayName({ ...plant, name })]).toEqual([named, told]);
});
