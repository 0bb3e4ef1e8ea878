// From 60 rem of width a rail, the list of a place and what it leads to stand beside each other; large text gets one pane.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";

import { engine, open, startWithSeason } from "./engine.mjs";
import { barriers, geometry } from "./measures.mjs";
import { until } from "./programs.mjs";
import { test } from "./tested.mjs";

const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Runs in the page: its headings of the first rank, how many panes there are, and what of the list is marked as open. */
function panes() {
  return {
    first: [...document.querySelectorAll("h1")].map((node) => node.textContent),
    lists: [...document.querySelectorAll(".list h2.head")].map((node) => node.textContent),
    marked: [...document.querySelectorAll(".list [aria-current=true]")].map((node) => node.getAttribute("href")),
    scrolled: document.querySelector(".list")?.scrollTop ?? null,
  };
}

for (const dark of [false, true]) {
  test(`${engine}: a list stays beside what it leads to, ${dark ? "dark" : "light"}`, async (t) => {
    const app = await startWithSeason(t, { width: 1280, height: 900, dark });
    await app.press("link", "Pantry");
    await app.sees("heading", "Bottles");
    assert.deepEqual((await app.evaluate(panes)).first, ["Pantry"], "a place alone is what the page is about");
    await app.evaluate(() => document.querySelector(".list").scrollTo(0, 120));
    assert.equal((await app.evaluate(panes)).scrolled, 120);

    await app.press("link", /^Calendula tincture.*strain from/);
    await app.sees("heading", "Recipe");
    await until("one heading of the first rank, and it the jar's", async () => (await app.evaluate(panes)).first.join() === "Calendula tincture");
    const beside = await app.evaluate(panes);
    assert.deepEqual(beside.lists, ["Pantry"]);
    assert.equal(beside.scrolled, 120, "the list stands where it stood");
    assert.deepEqual(beside.marked, [await app.evaluate(() => location.hash)]);
    await app.reads("Weigh the herb");

    await app.press("button", "Shake");
    await app.reads("Shaking saved.");
    assert.equal(await app.evaluate(() => document.querySelectorAll(".foot .bar").length), 1, "what was done is said once");
    await app.load(axe);
    assert.deepEqual([await app.evaluate(geometry), await app.evaluate(barriers)], [[], []]);

    await app.press("link", "Rack");
    await until("the rack alone", async () => (await app.evaluate(panes)).first.join() === "Rack");
    assert.deepEqual([await app.evaluate(geometry), await app.evaluate(barriers)], [[], []]);
  });
}

test(`${engine}: large text gets one pane, and the panes come and go with the width`, async (t) => {
  const app = await startWithSeason(t, { width: 1280, height: 900 });
  await open(app, "/pantry");
  await app.sees("heading", "Bottles");
  const rails = () => app.evaluate(() => document.querySelectorAll("nav.rail").length);
  assert.equal(await rails(), 1);
  await app.evaluate(() => void (document.documentElement.style.fontSize = "200%"));
  await until("one pane", async () => (await rails()) === 0);
  await app.evaluate(() => void (document.documentElement.style.fontSize = ""));
  await until("panes again", async () => (await rails()) === 1);
  await app.resize({ width: 768, height: 1024 });
  await until("one pane on a tablet held upright", async () => (await rails()) === 0);
});

test(`${engine}: a harvest that is saved comes before the others, which are not drawn anew`, async (t) => {
  const app = await startWithSeason(t, { width: 1280, height: 900 });
  const first = () => document.querySelector(".list li[aria-posinset='1']")?.textContent ?? "";
  // The first of a month stands below its own heading, the second comes before it.
  for (const grams of ["501", "502"]) {
    await open(app, "/pick?herb=peppermint");
    await app.fill("textbox", "Weight on the scale", grams);
    await app.evaluate(() => void (window.latest = document.querySelector(".list li[aria-posinset='1']")));
    await app.press("button", "Save harvest");
    await app.reads("Harvest saved.");
    await until(`${grams} g at the head of the list`, async () => (await app.evaluate(first)).replaceAll("\u00a0", " ").includes(`${grams} g`));
  }
  assert.ok(await app.evaluate(() => window.latest.isConnected && window.latest.getAttribute("aria-posinset") === "2"));
});

const inBrowser = { skip: engine === "browser" ? false : "only Chromium is given keys, and what runs before the page" };

/** Runs before the page: keeps the first list of the places that is drawn. */
function keepFirstPlaces() {
  new MutationObserver((_, watch) => {
    window.firstPlaces = document.querySelector("nav");
    if (window.firstPlaces) watch.disconnect();
  }).observe(document, { childList: true, subtree: true });
}

test("browser: what a finger is on in the first moment is not drawn anew when the other screens come", inBrowser, async (t) => {
  const app = await startWithSeason(t, { width: 1280, height: 900, before: [keepFirstPlaces] });
  await app.press("link", "Pantry");
  await app.sees("heading", "Bottles");
  assert.ok(await app.evaluate(() => window.firstPlaces.isConnected), "a tap that began on it ends on it");
});

const focused = () => document.activeElement.textContent.trim();

test("browser: keys lead through the places, and a list of them is shown and closed again", inBrowser, async (t) => {
  const app = await startWithSeason(t, { width: 1280, height: 900 });
  await app.key("3");
  await app.sees("heading", "Bottles");
  await app.press("link", /^Calendula tincture.*strain from/);
  await app.sees("heading", "Recipe");
  await until("the focus on the heading", async () => (await app.evaluate(focused)) === "Calendula tincture");

  await app.key("Shift+?");
  await app.sees("dialog", "Keyboard");
  await app.load(axe);
  assert.deepEqual(await app.evaluate(barriers), []);
  await app.key("2");
  assert.match(await app.evaluate(() => location.hash), /^#\/jar\//, "what lies over the page comes first");
  await app.key("Escape");
  await until("the focus where it was", async () => (await app.evaluate(focused)) === "Calendula tincture");

  await app.press("button", "Shake");
  await app.reads("Shaking saved.");
  await app.key("Control+z");
  await app.reads("Not shaken yet");
  await app.key("n");
  await app.reads("Expected amount");
  // A letter alone saves nothing.
  await app.evaluate(() => document.activeElement.blur());
  await app.key("n");
  assert.equal(await app.evaluate(focused), "Save straining");
  await app.key("3");
  assert.match(await app.evaluate(() => location.hash), /^#\/strain\//, "a digit leaves no form");
  await app.key("Escape");
  await app.sees("heading", "Recipe");
});

test("browser: a field takes the keys, and single keys can be turned off", inBrowser, async (t) => {
  const app = await startWithSeason(t, { width: 1280, height: 900 });
  await app.key("s");
  await app.sees("searchbox", "Herb, Latin name, lot code, note, person or bed");
  await app.fill("searchbox", "Herb, Latin name, lot code, note, person or bed", "");
  await app.evaluate(() => document.querySelector("#field-search").focus());
  for (const key of ["3", "s", "?"]) await app.key(key);
  assert.equal(await app.value("searchbox", "Herb, Latin name, lot code, note, person or bed"), "3s?");
  await app.key("Tab");
  await app.key("F1");
  await app.press("checkbox", "Single keys work");
  await app.press("button", "Close");
  await app.evaluate(() => document.activeElement.blur());
  await app.key("3");
  assert.match(await app.evaluate(() => location.hash), /^#\/search/);
  await app.key("F1");
  await app.press("checkbox", "Single keys work");
  await app.press("button", "Close");
  await app.key("3");
  await app.sees("heading", "Bottles");
});
