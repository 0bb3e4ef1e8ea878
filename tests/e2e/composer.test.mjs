// What the composer asks for and refuses, and what is written of a bottle and a recipe and taken back.

import assert from "node:assert/strict";

import { engine, open, startWithSeason, unfold } from "./engine.mjs";
import { until } from "./programs.mjs";
import { test } from "./tested.mjs";

test(`${engine}: a liquid that cannot be leads to its field, and a jar that hangs on the herb's water asks for a sample`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/fill");
  await app.press("checkbox", /^Sage, leaf/);
  await app.press("button", "Done");
  await app.press("button", /^Tincture of fresh herb in strong spirit/);
  await app.sees("button", "Pour");
  await unfold(app, ".supplies, .answer");
  await app.press("radio", "Another supply: Spirit");
  await app.fill("textbox", "Strength on the label", "200");
  await app.press("button", /between 0 and 100 % vol. You entered 200\.$/);
  await until("the strength has the focus", () =>
    app.evaluate(() => document.activeElement.id === "field-spirit.strength_percent_vol"),
  );

  // So near the limit that the driest leaf keeps and the dampest does not.
  await app.fill("textbox", "Strength on the label", "35.8");
  await app.reads("spirit of 35.8 % vol");
  await unfold(app, ".answer");
  await app.reads("Keeps cold: alcohol at the end");
  await app.press("button", "Enter an oven sample");
  await app.fill("textbox", "Sample before the oven", "15.0");
  await app.fill("textbox", "Sample after the oven", "16");
  await app.reads("must be between 0.1 and 15 g");
  await app.fill("textbox", "Sample after the oven", "3.0");
  await app.reads("25.57 % vol");
  await unfold(app, ".answer");
  await app.reads("Keeps: alcohol at the end");
  await app.reads("an oven sample, 3 g left of 15 g");
});

test(`${engine}: what a bottle cost and how good a recipe was are written and taken back`, async (t) => {
  const app = await startWithSeason(t);
  const openBottle = async () => {
    await open(app, "/shelf");
    await app.press("link", /^Plain spirit 40 %/);
    await app.sees("textbox", "Price");
  };
  await openBottle();
  await app.fill("textbox", "Strength on the label", "41");
  await app.fill("textbox", "Price", "15");
  await app.press("button", "Save supply");
  await app.reads("Supply changed.");
  await openBottle();
  assert.equal(await app.value("textbox", "Price"), "15");
  assert.equal(await app.value("textbox", "Strength on the label"), "41");
  await app.fill("textbox", "Price", "");
  await app.press("button", "Save supply");
  await until("the shelf again", () => app.evaluate(() => location.hash === "#/shelf"));
  await openBottle();
  assert.equal(await app.value("textbox", "Price"), "");

  await open(app, "/recipes");
  await app.reads("4 of 5 stars");
  await app.press("link", /4 of 5 stars$/);
  await app.press("button", "More");
  await app.press("link", "Edit");
  await app.press("radio", "No rating");
  await app.press("button", "Save changes");
  await app.reads("Recipe changed.");
  await until("no star is left", () => app.evaluate(() => !document.body.innerText.includes("stars")));
});
