// A test that ends: one that waits for what never comes is given up, and its name is said.

import { test as tested } from "node:test";

/** Longer than any test takes beside other work. */
const LONGEST = 15 * 60_000;

/** As `test` of Node, with an end. */
export const test = (name, ...rest) => {
  const [options, body] = rest.length === 2 ? rest : [{}, rest[0]];
  return tested(name, { timeout: LONGEST, ...options }, body);
};
