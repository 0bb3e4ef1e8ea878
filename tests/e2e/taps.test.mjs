// How often a thumb has to come down, counted on the demo season from the moment the app opens.

import assert from "node:assert/strict";

import { engine, startWithSeason, unfold } from "./engine.mjs";
import { test } from "./tested.mjs";

/** The app as it opens for a maker who knows it, and a count of what is touched; digits and letters are not counted. */
async function opened(t) {
  const app = await startWithSeason(t, { width: 360, height: 740 });
  const counted = {
    taps: 0,
    async press(role, name) {
      counted.taps += 1;
      await app.press(role, name);
    },
    async write(role, name, text) {
      counted.taps += 1;
      await app.fill(role, name, text);
    },
    async choose(role, name, option) {
      counted.taps += 2;
      await app.choose(role, name, option);
    },
    async digits(...digits) {
      for (const digit of digits) await app.press("button", digit);
    },
  };
  return { app, counted };
}

test(`${engine}: an herb picked lately is a saved harvest in at most 8 taps and its digits`, async (t) => {
  const { app, counted } = await opened(t);
  await counted.press("link", "Pick");
  await counted.press("button", "Rosemary");
  // Yew is its look-alike, which nobody is spared to rule out.
  await counted.press("checkbox", "I checked every plant and it is none of these");
  await counted.write("textbox", "Weight on the scale", "180");
  await counted.choose("combobox", "Bed or place", "Long bed");
  await counted.press("radio", "Dew");
  await counted.press("button", "Save harvest");
  await app.reads("Harvest saved.");
  await app.reads("Rosemary");
  await app.reads("180 g");
  t.diagnostic(`${counted.taps} taps, with bed and dew`);
  assert.ok(counted.taps <= 8, `it took ${counted.taps} taps`);
});

test(`${engine}: an herb with look-alikes is found and saved in at most 8 taps and what is typed`, async (t) => {
  const { app, counted } = await opened(t);
  await counted.press("link", "Pick");
  await counted.write("searchbox", "Herb", "yarr");
  await counted.press("button", "Yarrow");
  await app.reads("Poisonous look-alikes");
  await counted.press("checkbox", "I checked every plant and it is none of these");
  await counted.write("textbox", "Weight on the scale", "300");
  await counted.press("button", "Save harvest");
  await app.reads("Harvest saved.");
  t.diagnostic(`${counted.taps} taps`);
  assert.ok(counted.taps <= 8, `it took ${counted.taps} taps`);
});

test(`${engine}: a tray is weighed in with 3 taps and the digits`, async (t) => {
  const { app, counted } = await opened(t);
  await counted.press("link", "Rack");
  await counted.press("link", /^Weigh .*Tray 4/);
  await counted.digits("4", "6", "0");
  await counted.press("button", "Save weight");
  await app.reads("Weight saved.");
  t.diagnostic(`${counted.taps} taps`);
  assert.ok(counted.taps <= 3, `it took ${counted.taps} taps`);
});

test(`${engine}: a tray that went mouldy is thrown away with 5 taps and the reason, and comes back with one`, async (t) => {
  const { app, counted } = await opened(t);
  await counted.press("link", "Rack");
  await counted.press("link", /^Rosemary, /);
  await counted.press("link", "Throw away");
  await app.reads("If you see mould, throw it all away.");
  await app.reads("Common practice, no source");
  await counted.write("textbox", "Why", "Mould under the leaves");
  await counted.press("button", "Throw it away");
  await app.reads("while it was drying");
  await app.reads("Mould under the leaves");
  t.diagnostic(`${counted.taps} taps`);
  assert.ok(counted.taps <= 5, `it took ${counted.taps} taps`);
  await app.press("button", "Undo");
  await app.sees("link", "Take it down");
});

test(`${engine}: the recipe of a jar is read at most 2 taps from the pantry`, async (t) => {
  const { app, counted } = await opened(t);
  await app.press("link", "Pantry");
  await counted.press("link", /^Calendula tincture/);
  await app.sees("heading", "Recipe");
  await app.reads("spirit of 96 % vol");
  t.diagnostic(`${counted.taps} taps`);
  assert.ok(counted.taps <= 2, `it took ${counted.taps} taps`);
});

test(`${engine}: a vinegar of five plants, each weighed, is poured with at most 20 taps and the digits`, async (t) => {
  const { app, counted } = await opened(t);
  await counted.press("link", "Pantry");
  await counted.press("link", "Start a jar");
  const plants = ["Lavender, flower", "Rose, petal", "Lime flower, flower", "Hawthorn, berry", "Dandelion, root"];
  for (const plant of plants) await counted.press("checkbox", new RegExp(`^${plant}`));
  await counted.press("button", "Done");
  for (const plant of plants) await counted.write("textbox", `How much ${plant}, dried`, "10");
  // A fold has no role that every engine gives it.
  counted.taps += 1;
  await app.reads("What do you want to make?");
  await app.reads("more");
  await unfold(app, "details");
  await counted.press("button", /^Herbal vinegar/);
  await app.sees("slider", "Ratio (herb to liquid)");
  await counted.press("button", "Pour");
  await app.reads("Jar started.");
  t.diagnostic(`${counted.taps} taps`);
  assert.ok(counted.taps <= 20, `it took ${counted.taps} taps`);
});
