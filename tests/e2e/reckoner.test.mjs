// The reckoner answers without an entry in the book. The figures are worked by hand beside each test.

import assert from "node:assert/strict";

import { engine, open, withApp } from "./engine.mjs";
import { test } from "./tested.mjs";

async function startReckoner(t, size) {
  const app = await withApp(t, size);
  await app.press("button", "Open the book");
  await app.press("link", "More");
  await app.press("link", /^Reckoner/);
  return app;
}

test(`${engine}: a spirit is thinned to fill a bottle, three taps from the garden`, async (t) => {
  const app = await startReckoner(t, { width: 360, height: 740 });
  await app.press("link", /^Thin a spirit/);
  await app.reads("Fill in the fields below");
  await app.fill("textbox", "Strength of the spirit", "96");
  await app.fill("textbox", "Strength you want", "40");
  await app.fill("textbox", "Bottle holds", "500");
  // 500 x 40 / 96 = 208.3 mL of spirit, 168.2 g at 807.4 kg/m3; 500 mL of 40 % weigh 474.0 g at 948.05 kg/m3 (R 22),
  // so 305.8 g of water, 306.4 mL at 998.2 kg/m3, and 208.3 + 306.4 - 500 = 14.7 mL are lost.
  await app.reads("208 mL");
  await app.reads("168 g");
  await app.reads("306 mL");
  await app.reads("306 g");
  await app.reads("it shrinks by 14.7 mL");
  await app.reads("40 % vol");

  await app.press("link", "Save as a supply");
  await app.press("button", "Save supply");
  await app.reads("Supply added.");
  await app.reads("500 mL of 500 mL left");
});

test(`${engine}: a spirit is never thinned to more than it is`, async (t) => {
  const app = await startReckoner(t);
  await app.press("link", /^Thin a spirit/);
  await app.fill("textbox", "Strength of the spirit", "40");
  await app.fill("textbox", "Strength you want", "60");
  await app.fill("textbox", "Bottle holds", "500");
  await app.reads("These two can't make that strength.");
  assert.equal(await app.evaluate(() => document.querySelector(".acts a")), null, "nothing is saved that was not reached");
});

test(`${engine}: what a syrup's free water needs is reckoned, and what it lacks`, async (t) => {
  const app = await startReckoner(t);
  await app.press("link", /^Will it keep/);
  // 45 g of sugar in 71 mL of water are 115.9 g of 38.8 % sugar, 99.0 mL at 1.171 g/mL (ICUMSA); 45 x 0.647 = 29.1 mL are
  // sugar and 45 x 0.53 = 23.9 mL are bound, so 46.0 mL stay free and need 18 % of that, 8.3 mL.
  await app.fill("textbox", "Amount of part 1", "71");
  await app.press("button", "Add a part");
  await app.fill("textbox", "Amount of part 3", "45");
  await app.reads("Lacks 8.3 mL of pure alcohol");
});

test(`${engine}: one measure in a glass says its alcohol and that it is no dose`, async (t) => {
  const app = await startReckoner(t);
  await app.press("link", /^In the glass/);
  await app.reads("This is no dose.");
  await app.fill("textbox", "One measure", "5");
  await app.fill("textbox", "Water, tea or sparkling water", "200");
  await app.fill("textbox", "Strength of the bottle", "40");
  await app.fill("textbox", "Acid in the bottle", "5");
  // 5 mL x 0.40 x 0.789 g/mL = 1.58 g of alcohol; 5 x 5 / 100 = 0.25 g of acid; about 2 / 205 = 1 % vol in the glass.
  await app.reads("1.6 g");
  await app.reads("0.3 g");
});

test(`${engine}: dried herb is told as fresh and back, with the range of its water`, async (t) => {
  const app = await startReckoner(t);
  await app.press("link", /^Dried for fresh/);
  await app.fill("searchbox", "Herb", "pepperm");
  await app.press("button", "Peppermint");
  await app.press("radio", "leaf");
  await app.fill("textbox", "Its weight", "10");
  await app.reads("fresh to dried");
});

test(`${engine}: a measure is told in every other`, async (t) => {
  const app = await startReckoner(t);
  await app.press("link", /^Measures/);
  await app.fill("textbox", "Amount", "30");
  // 30 / 29.5735 = 1.01 US fl oz; six teaspoons, two tablespoons.
  await app.reads("1.01");
  await app.press("radio", "Alcohol");
  await app.reads("60");
});
