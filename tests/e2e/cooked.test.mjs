// Elderberries, fresh and dried, through the pot into syrup and shrub.

import { engine, open, withApp } from "./engine.mjs";
import { test } from "./tested.mjs";

async function pickBerries(app) {
  await app.press("link", "Pick");
  await app.fill("searchbox", "Herb", "elderberry");
  await app.press("button", /^Elder berry/);
  await app.fill("textbox", "Weight on the scale", "1000");
  await app.press("checkbox", "I checked every plant and it is none of these");
  await app.press("button", "Save harvest");
  await app.reads("Harvest saved.");
}

async function cook(app, plant, water, pot, full) {
  await app.press("button", "More");
  await app.press("link", "Cook it");
  await app.fill("textbox", "How much goes into the pot", plant);
  await app.fill("textbox", "Water poured on", water);
  await app.fill("textbox", "The empty pot", pot);
  await app.fill("textbox", "The pot with what you strained", full);
  await app.press("button", "Save");
  await app.reads("Cooked. It now has a lot code of its own.");
  await app.reads("cooked, left");
}

async function pour(app, preparation, verdict) {
  await app.reads("more that suit it less");
  await app.evaluate(() => document.querySelectorAll("details").forEach((fold) => (fold.open = true)));
  await app.press("button", preparation);
  await app.reads(verdict);
  await app.press("button", "Pour");
  await app.reads("Jar started.");
}

test(`${engine}: raw elderberries become nothing, cooked ones syrup and shrub, from fresh and from dried berries`, async (t) => {
  const app = await withApp(t);
  await app.press("button", "Open the book");
  await pickBerries(app);

  // Raw they are stopped, whatever it is, and the page says why.
  await app.press("link", "Start a jar");
  await app.reads("Do not make it");
  await app.press("button", "Back");

  await cook(app, "400", "200", "800", "1250");
  await app.reads("450 g");
  await app.press("link", "Start a jar");
  await app.reads("How much Elder berry, berry, cooked");
  await app.reads("450 g left");
  await pour(app, /^Syrup/, "Keeps cold");
  await app.reads("Elder berry, berry, cooked");

  // The rest of the harvest is dried, and cooked from the dried lot.
  await open(app, "/garden");
  await app.press("link", /^Elder berry/);
  await app.press("link", "Put on the rack");
  await app.fill("textbox", "Fresh herb on this tray", "600");
  await app.press("button", "Put it on the rack");
  await app.reads("Tray is on the rack.");
  await app.press("link", "Take it down");
  for (const key of ["1", "3", "0"]) await app.press("button", key);
  await app.press("button", "Take it down");
  await app.reads("Taken down. It's now in your dried stock.");
  await cook(app, "100", "1000", "800", "1500");
  await app.press("link", "Start a jar");
  await pour(app, /^Shrub/, "Keeps cold");
  await app.reads("pH strip");
});
