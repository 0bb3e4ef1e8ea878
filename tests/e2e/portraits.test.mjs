// The maker's own photos of a jar, a bed and a herb.

import assert from "node:assert/strict";

import { idBehind } from "./measures.mjs";
import { engine, open, startWithSeason, unfold } from "./engine.mjs";
import { file, until } from "./programs.mjs";
import { test } from "./tested.mjs";

const sample = (name) => file("tests", "photo", "samples", name);
/** What the photos of the page are called, and whether each can be seen. */
const photos = () => [...document.querySelectorAll("main img")].map((img) => [img.alt, img.complete && img.naturalWidth > 0]);

async function seesPhotos(app, ...expected) {
  await until(`photos called ${expected}`, async () => {
    const found = await app.evaluate(photos);
    return found.length === expected.length && found.every(([alt, seen], at) => seen && expected[at].test(alt));
  });
}

async function openJar(app, ...words) {
  await open(app, "/pantry");
  const id = await until("the jar", () => app.evaluate(idBehind, { start: "#/jar/", words }));
  await open(app, `/jar/${id}`);
  await app.sees("link", "Strain");
}

test(`${engine}: a jar keeps the photos that are taken of it, and shows one in place of its drawing`, async (t) => {
  const app = await startWithSeason(t);
  await openJar(app, "Calendula tincture");
  await app.press("button", "More");
  await app.attach("Take a photo", sample("gray.jpg"));
  await app.reads("Photo added.");
  await seesPhotos(app, /^Photo of Calendula tincture, .*, Day \d+, /);
  // What was just written is photographed from where it is said.
  await app.attach("Take a photo of it", sample("no_exif.jpg"));
  await seesPhotos(app, /^Photo of Calendula tincture, /, /^Photo of Calendula tincture, /);
  const shows = "main [aria-label^='Show at top']";
  await app.evaluate((shows) => document.querySelector(shows).click(), shows);
  await app.reads("Photo shown at the top.");
  await until("the photo in place of the drawing", () => app.evaluate(() => !!document.querySelector("main .drawn img")?.naturalWidth));
  assert.match(await app.evaluate(() => document.querySelector("main .drawn").ariaLabel), /^Photo of Calendula tincture, Day \d+$/);
  await app.evaluate(() => document.querySelector("main [aria-label^='Remove the photo']").click());
  await app.reads("Photo removed.");
  await until("the drawing again", () => app.evaluate(() => !!document.querySelector("main .drawn svg")));
  await seesPhotos(app, /^Photo of Calendula tincture, /);
  await app.press("button", "Undo");
  await until("the photo again", () => app.evaluate(() => document.querySelectorAll("main li img").length === 2));
});

test(`${engine}: a bed has its photo, and what is no photo is refused in words`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/beds");
  const id = await until("a bed", () => app.evaluate(idBehind, { start: "#/bed/", words: [] }));
  await open(app, `/bed/${id}`);
  await app.reads("Photos");
  await unfold(app, "details");
  await app.attach("Take a photo", file("LICENSE"));
  await app.reads("not a photo");
  await app.attach("Take a photo", sample("place_and_zone.jpg"));
  await app.reads("Photo added.");
  await seesPhotos(app, /^Photo of .*, (21\sJun|Jun\s21)/);
});

test(`${engine}: an own herb shows its photo in place of a drawing`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/own-herb");
  await app.fill("textbox", "Common name", "Mountain tea of ours");
  await app.fill("textbox", "Parts you use", "leaf");
  await app.press("button", "Add a herb");
  await app.sees("heading", "What is known");
  await unfold(app, "details");
  await app.attach("Take a photo", sample("place_and_zone.jpg"));
  await app.reads("Photo added.");
  await app.evaluate(() => document.querySelector("main [aria-label^='Show at top']").click());
  await app.reads("Photo shown at the top.");
  await seesPhotos(app, /^Photo of Mountain tea of ours, /, /^Photo of Mountain tea of ours, /);
  assert.equal(await app.evaluate(() => document.querySelectorAll("main .sprig svg").length), 0, "in place of the drawing");
});
