// The first minute with an empty book.

import assert from "node:assert/strict";

import { engine, withApp } from "./engine.mjs";
import { until } from "./programs.mjs";
import { test } from "./tested.mjs";

const CAUTION = "It does not diagnose, treat or choose a dose.";
const shows = (app, text) => app.evaluate((text) => document.body.innerText.includes(text), text);

test(`${engine}: an empty book explains itself in three sentences and cautions once`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740 });
  await app.sees("heading", "From the bed to the jar");
  await app.reads(CAUTION);
  for (const place of ["Pick:", "Rack:", "Pantry:"]) await app.reads(place);
  assert.equal(await shows(app, "demo season"), false, "nothing is offered before the cautions were read");

  await app.press("button", "I have read this");
  await app.sees("heading", "Nothing picked yet");
  assert.equal(await shows(app, CAUTION), false);
  await app.evaluate(() => location.reload()).catch(() => {});
  await app.sees("heading", "Nothing picked yet");
  assert.equal(await shows(app, CAUTION), false, "the cautions come once");

  await app.press("link", "More");
  await app.press("link", /^Settings/);
  // The engines do not agree on the role of what opens a fold.
  await until("the fold of the cautions", () =>
    app.evaluate(() => {
      const fold = [...document.querySelectorAll("summary")].find((each) => each.textContent.includes("Cautions"));
      fold?.click();
      return fold !== undefined;
    }),
  );
  await app.reads(CAUTION);
});

test(`${engine}: the demo season is looked at apart from the own book and removed in one tap`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740 });
  await app.press("button", "I have read this");
  await app.press("button", "Look around in a demo season");
  await app.reads("An invented garden, apart from your own book.");
  await app.sees("link", /^Sage/);
  assert.equal(await shows(app, CAUTION), false, "what was read is not shown again");
  await app.press("link", "Pick");
  await app.press("button", "Sage");
  await app.press("button", "Back");
  await app.press("link", "Rack");
  await app.reads("Demo season");
  await app.press("link", "More");
  await app.reads("Demo season");
  assert.equal(await shows(app, "Keep safe"), false, "an invented book is not backed up");

  await app.press("button", "Remove it");
  await app.sees("heading", "Nothing picked yet");
  assert.equal(await shows(app, "Demo season"), false);
  await app.press("link", "Pick");
  await app.sees("searchbox", "Herb");
  assert.equal(await shows(app, "Sage"), false, "a form begun in the season stays in it");
  await app.press("button", "Back");
  await app.press("link", "Pantry");
  await app.sees("heading", "No jars yet");
  await app.press("link", "More");
  await app.press("link", /^What was done/);
  await app.reads("Changed the settings");
  assert.equal(await shows(app, "Sage"), false, "nothing of the season is in the own book");
});
