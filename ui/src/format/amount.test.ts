import { expect, test } from "vitest";
import { speaking } from "../../tests/speaking";

test("an amount is told in the unit that a kitchen measures it in", async () => {
  await speaking("en");
  const { joined, joinedSpan, mass, massSpan, pouredMass, volume } = await import("./amount");
  const flat = (text: string) => text.replace("\u00a0", " ");
  expect(flat(joined(mass(1240, "metric")))).toBe("1240 g");
  expect(flat(joined(mass(12_400, "metric")))).toBe("12.4 kg");
  expect(flat(joined(pouredMass(412.6, "metric")))).toBe("413 g");
  expect(flat(joined(volume(15.46, "metric")))).toBe("15.5 mL");
  expect(flat(joined(volume(12_000, "metric")))).toBe("12 L");
  // A pound is 453.59237 g and sixteen ounces; a US fluid ounce is 29.5735295625 mL, both by definition.
  expect(flat(joined(mass(453.59237, "us")))).toBe("16 oz");
  expect(flat(joined(mass(2 * 453.59237, "us")))).toBe("2 lb");
  expect(flat(joined(volume(295.735295625, "us")))).toBe("10 fl oz");
  expect(flat(joinedSpan(massSpan({ low: 72.4, value: 131.6, high: 241.8 }, "metric")))).toBe("70–240 g");
  expect(flat(joinedSpan(massSpan({ low: 50, value: 50, high: 50 }, "metric")))).toBe("50 g");
});
