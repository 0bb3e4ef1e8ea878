// The first minute with an empty book.

import assert from "node:assert/strict";

import { engine, withApp } from "./engine.mjs";
import { tellSeason, until } from "./programs.mjs";
import { test } from "./tested.mjs";

const CAUTION = "It does not diagnose, treat or choose a dose.";
const shows = (app, text) => app.evaluate((text) => document.body.innerText.includes(text), text);

test(`${engine}: an empty book shows its way in three lines and cautions once`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740 });
  await app.sees("heading", "Trugbook");
  await app.reads(CAUTION);
  for (const place of ["Garden.", "Rack.", "Pantry."]) await app.reads(place);

  await app.press("button", "Open the book");
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

for (const language of ["en", "de"]) {
  test(`${engine}: the first minute stands on one screen, in ${language}`, async (t) => {
    const speak = [(language) => localStorage.setItem("language", language), language];
    const app = await withApp(t, { width: 360, height: 740, before: speak });
    await until("the way in", () => app.evaluate(() => document.querySelector(".acts .main") !== null));
    await app.evaluate(() => document.fonts.ready.then(() => true));
    assert.equal(await app.evaluate(() => document.documentElement.scrollHeight), 740);
    for (const width of [320, 360, 768, 1280]) {
      await app.resize({ width, height: 740 });
      assert.ok(await app.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `${width} px`);
    }
  });
}

test(`${engine}: the demo season is looked at apart from the own book and removed in one tap`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740 });
  await app.press("button", "See an example");
  await app.reads("An invented garden, apart from your own records.");
  await app.sees("link", /^Sage/);
  assert.equal(await shows(app, CAUTION), false, "what was read is not shown again");
  await app.press("link", "Pick");
  await app.press("button", "Sage");
  await app.press("button", "Back");
  await app.press("link", "Rack");
  await app.reads("Demo season");
  await app.press("link", "More");
  await app.reads("Demo season");
  assert.equal(await shows(app, "Backup"), false, "an invented book is not backed up");

  await app.press("button", "Remove it");
  await app.reads(CAUTION);
  await app.press("button", "Open the book");
  await app.sees("button", "Look around in a demo season");
  assert.equal(await shows(app, "Demo season"), false);
  await app.press("link", "Pick");
  await app.sees("searchbox", "Herb");
  assert.equal(await shows(app, "Sage"), false, "a form begun in the season stays in it");
  await app.press("button", "Back");
  await app.press("link", "Pantry");
  await app.sees("heading", "No jars yet");
  await app.press("link", "More");
  await app.press("link", /^History/);
  await app.reads("Changed the settings");
  assert.equal(await shows(app, "Sage"), false, "nothing of the season is in the own book");
});

test(`${engine}: a book that holds harvests is not begun again`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740, prepare: tellSeason });
  await app.sees("link", "Pick");
  await app.sees("link", /^Sage/);
  assert.equal(await shows(app, CAUTION), false);
});
