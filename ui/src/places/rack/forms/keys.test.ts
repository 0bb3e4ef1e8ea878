import { expect, test } from "vitest";
import { erased, pressed } from "./keys";

const tapped = (keys: string, from = "") => [...keys].reduce(pressed, from);

test("taps write a number with one decimal mark", () => {
  expect(tapped("1240")).toBe("1240");
  expect(tapped("12.5.7")).toBe("12.57");
  expect(tapped("12,5,")).toBe("12,5");
  // What was typed with the other mark has its mark as well.
  expect(tapped(".3", "2,5")).toBe("2,53");
  expect(tapped(".5")).toBe(".5");
});

test("a tap takes the last digit back, and the mark may come again", () => {
  expect(erased("12.")).toBe("12");
  expect(tapped(".5", erased("12."))).toBe("12.5");
  expect(erased("")).toBe("");
});
