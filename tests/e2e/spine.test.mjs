// From the bed to the jar, as a maker does it.

import assert from "node:assert/strict";

import { engine, withApp, unfold } from "./engine.mjs";
import { file } from "./programs.mjs";
import { test } from "./tested.mjs";

const photo = file("tests", "photo", "samples", "place_and_zone.jpg");

async function startFresh(t) {
  const app = await withApp(t);
  await app.press("button", "Open the book");
  return app;
}

async function pickPeppermint(app, grams) {
  await app.press("link", "Pick");
  await app.fill("searchbox", "Herb", "pepperm");
  await app.press("button", "Peppermint");
  await app.press("radio", "leaf");
  await app.fill("textbox", "Weight on the scale", grams);
}

test(`${engine}: a harvest with its photo goes to the rack and into a jar in the pantry`, async (t) => {
  const app = await startFresh(t);

  await pickPeppermint(app, "250");
  await app.attach("Take a photo", photo);
  await app.reads("from the photo");
  await app.reads("Dry, it will weigh about");
  await app.press("button", "Save harvest");
  await app.reads("Harvest saved.");
  await app.reads("Facts");
  await unfold(app, "details");
  await app.reads("from the photo");

  await app.press("link", "Put on the rack");
  await app.fill("textbox", "Fresh herb on this tray", "150");
  await app.fill("textbox", "Name of the tray", "Blue basket");
  await app.press("button", "Put it on the rack");
  await app.reads("Tray is on the rack.");
  await app.press("link", "Weigh");
  for (const key of ["9", "0"]) await app.press("button", key);
  await app.press("button", "Save weight");
  await app.reads("Weight saved.");

  await app.press("button", "Back");
  await app.press("link", "Start a jar");
  await app.press("button", /^Tincture of fresh herb, water counted/);
  await app.fill("textbox", "Strength on the label", "96");
  await app.reads("spirit of 96 % vol");
  await app.press("button", "Pour");
  await app.reads("Jar started.");
  // The way that was come is the way back: the harvest, the garden.
  await app.press("button", "Back");
  await app.reads("Blue basket");
  await app.reads("100 g fresh, ");
  await app.press("button", "Back");
  await app.press("link", "Pantry");
  await app.press("link", /^Peppermint tincture/);
  await app.reads("spirit of 96 % vol");
});

test(`${engine}: a harvest that was undone is gone`, async (t) => {
  const app = await startFresh(t);
  await pickPeppermint(app, "250");
  await app.press("button", "Save harvest");
  await app.reads("Harvest saved.");
  await app.press("button", "Undo");
  await app.reads("This harvest is not in your records.");
  await app.press("button", "Back");
  await app.sees("heading", "Nothing picked yet");
});

test(`${engine}: a form that cannot be saved says why, takes the focus and leads to the field`, async (t) => {
  const app = await startFresh(t);
  await pickPeppermint(app, "a lot");
  await app.press("button", "Save harvest");
  await app.sees("alert");
  const role = await app.evaluate(() => document.activeElement.getAttribute("role"));
  assert.equal(role, "alert", "the summary takes the focus, so that a screen reader reads it");
  await app.press("button", "Weight on the scale: enter a number, such as 250 or 2.5.");
  const field = await app.idOf("textbox", "Weight on the scale");
  assert.equal(await app.evaluate(() => document.activeElement.id), field, "the message leads to its field");
});
