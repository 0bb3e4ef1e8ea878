// A form that was not saved outlives the page, as a phone may end the app while its camera is open.

import assert from "node:assert/strict";

import { engine, withApp } from "./engine.mjs";
import { file, until } from "./programs.mjs";
import { test } from "./tested.mjs";

test(`${engine}: a harvest form outlives the page, and is gone once it is saved`, async (t) => {
  const app = await withApp(t);
  await app.press("button", "Open the book");
  await app.press("link", "Pick");
  await app.fill("searchbox", "Herb", "pepperm");
  await app.press("button", "Peppermint");
  await app.press("radio", "leaf");
  await app.attach("Take a photo", file("tests", "photo", "samples", "place_and_zone.jpg"));
  await app.reads("from the photo");
  await app.fill("textbox", "Weight on the scale", "250");
  await app.reads("Dry, it will weigh about");

  await app.evaluate(() => {
    window.isOld = true;
    setTimeout(() => location.reload());
  });
  await until("the page begins anew", () => app.evaluate(() => !window.isOld).catch(() => false));
  await app.reads("Dry, it will weigh about");
  await app.reads("from the photo");
  assert.equal(await app.value("textbox", "Weight on the scale"), "250");

  await app.press("button", "Save harvest");
  await app.reads("Harvest saved.");
  await app.press("button", "Back");
  await app.press("link", "Pick");
  await app.sees("searchbox", "Herb");
  assert.equal(await app.value("textbox", "Weight on the scale"), "");
});
