// What a test tells a journal before the app opens it.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";

import { built } from "./programs.mjs";

const DAY = 86_400_000;
const daysAgo = (days) => new Date(Date.now() - days * DAY).toISOString();

/** Asks the core of a journal, by a command and its request. */
export const asking = (folder) => (command, request) => {
  const line = `${JSON.stringify({ command, request })}\n`;
  const said = execFileSync(built("dev"), ["ask", "--journal", folder], { input: line, encoding: "utf8" });
  const { reply, failure } = JSON.parse(said);
  assert.equal(failure, undefined, said);
  return reply;
};

/** A tray that was weighed once a day until yesterday; the answer is its id. */
export function dried(ask, herb, part, name, fresh, masses) {
  const begun = masses.length;
  const harvest = ask("harvest.record", { herb, part, gross_g: fresh, surface: "dry", picked_at: daysAgo(begun + 1.1) }).harvest.id;
  const tray = ask("tray.start", { harvest, mass_g: fresh, name, started_at: daysAgo(begun + 1) }).tray.id;
  masses.forEach((gross_g, day) => void ask("tray.weigh", { tray, gross_g, at: daysAgo(begun - day) }));
  return tray;
}

/** A tray whose weight no longer falls: probably dry. */
export const atRest = (ask) => dried(ask, "peppermint", "leaf", "Loft", 2000, [1200, 750, 560, 500, 475, 462, 458, 456, 455, 455, 455]);

/** The code of a recipe, as a card of the first version bears it. */
export const CODE = "trugbook:recipe/1/N2LOL4CFRQYQVABQBRC26IUZUPKKDA7HOAWBTCUNCIUFKYWF5MNUVQJFEHX737AANM6HRWCPDVPCTFIVCCVJJLJ6ZJRVFYIEDABNYFRSSM465NR2T6OZWHCR6OL2QVELF3PBBFRHM7R7BRWWDA5CCNEL327NV7IP7IAA";
