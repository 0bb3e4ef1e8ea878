// Every screen: photographed, measured, and read by axe, in light and dark and with text twice as large.

import assert from "node:assert/strict";
import { mkdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";

import { engine, withApp } from "./engine.mjs";
import { barriers, geometry, idBehind, stillToCome } from "./measures.mjs";
import { file, tellSeason, until } from "./programs.mjs";
import { test } from "./tested.mjs";

const pictures = path.join(import.meta.dirname, "pictures", engine);
const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

async function goTo(app, address) {
  await app.evaluate((address) => void (location.hash = address), address);
  let waitsFor = [];
  await until(
    () => `${address} is there, with ${waitsFor.join(", ")}`,
    async () => (waitsFor = await app.evaluate(stillToCome)).length === 0,
  );
}

/** Every screen with its address; ids are found as a maker finds them, by links. */
async function addresses(app) {
  const behind = async (address, start, ...words) => {
    await goTo(app, address);
    const id = await until(`a link to ${start} on ${address}`, () => app.evaluate(idBehind, { start, words }));
    return id;
  };
  const harvest = await behind("/garden", "#/harvest/");
  const tray = await behind("/rack", "#/tray/");
  const dried = await behind("/rack", "#/tray/", "dried left");
  const weighing = await behind(`/tray/${tray}`, "#/weighing/");
  const jar = await behind("/pantry", "#/jar/");
  const herb = await behind("/herbs", "#/herb/");
  const fresh = await behind("/start-tray", "#/start-tray/");
  const supply = await behind("/shelf", "#/supply/");
  const standing = await behind("/pantry", "#/jar/", "Calendula tincture");
  const strained = await behind("/pantry", "#/jar/", "Chamomile tincture");
  const bottle = await behind("/pantry", "#/bottle/", "Chamomile tincture", "open");
  const badOil = await behind("/pantry", "#/bottle/", "Throw it away");
  const recipe = await behind("/recipes", "#/recipe/");
  const bed = await behind("/trace", "#/trace/bed/", "Long bed");
  return {
    "first-words": "/garden",
    garden: "/garden",
    pick: "/pick",
    harvest: `/harvest/${harvest}`,
    "correct-harvest": `/correct-harvest/${harvest}`,
    bin: `/bin/harvest/${fresh}`,
    cook: `/cook/harvest/${fresh}`,
    "cook-dried": `/cook/tray/${dried}`,
    rack: "/rack",
    "start-tray": "/start-tray",
    "start-tray-of": `/start-tray/${fresh}`,
    tray: `/tray/${tray}`,
    weigh: `/weigh/${tray}`,
    "take-down": `/weigh/${tray}?last`,
    weighing: `/weighing/${weighing}?tray=${tray}`,
    "correct-tray": `/correct-tray/${tray}`,
    sample: `/sample/${tray}`,
    "tray-dried": `/tray/${dried}`,
    "bin-drying": `/bin/tray/${tray}`,
    "bin-dried": `/bin/tray/${dried}`,
    pantry: "/pantry",
    fill: "/fill",
    "fill-with": `/fill?lot=harvest:${fresh}`,
    "fill-proposal": `/fill?lot=harvest:${fresh}`,
    jar: `/jar/${jar}`,
    "correct-jar": `/correct-jar/${jar}`,
    fail: `/fail/${jar}`,
    empty: `/empty/${strained}`,
    "jar-standing": `/jar/${standing}`,
    "jar-strained": `/jar/${strained}`,
    strain: `/strain/${standing}`,
    "top-up": `/top-up/${standing}`,
    "fill-bottles": `/fill-bottles/${strained}`,
    "fill-bottles-told": `/fill-bottles/${strained}`,
    "pour-again": `/again/jar/${strained}`,
    "pour-on-the-marc": `/again/marc/${strained}`,
    "keep-recipe": `/keep-recipe/${standing}`,
    recipes: "/recipes",
    recipe: `/recipe/${recipe}`,
    bottle: `/bottle/${bottle}`,
    "bottle-to-bin": `/bottle/${badOil}`,
    "label-of-a-bottle": `/labels/bottle/${bottle}`,
    "label-of-a-jar": `/labels/jar/${standing}`,
    "labels-of-the-filled": `/labels/filled/${strained}`,
    "lot-unknown": "/lot/none",
    scan: "/scan",
    use: `/use/${bottle}`,
    "use-drops": `/use/${bottle}`,
    give: `/give/${bottle}`,
    check: `/check/${bottle}`,
    "bin-bottle": `/bin-bottle/${badOil}`,
    "correct-bottle": `/correct-bottle/${bottle}`,
    droppers: "/droppers",
    dropper: "/dropper",
    due: "/due",
    "trace-from": "/trace",
    trace: `/trace/bed/${bed}`,
    plan: "/plan",
    "plan-bottles": "/plan-bottles",
    season: "/season/2026",
    beds: "/beds",
    bed: `/bed/${bed}`,
    search: "/search?text=calendula",
    more: "/more",
    herbs: "/herbs",
    herb: `/herb/${herb}`,
    "own-herb": "/own-herb",
    shelf: "/shelf",
    supply: `/supply/${supply}`,
    "new-supply": "/supply",
    settings: "/settings",
    deeds: "/deeds",
    safe: "/safe",
    "safe-restore": "/safe-restore",
    "safe-merge": "/safe-merge",
    "safe-export": "/safe-export",
    "safe-import": "/safe-import",
    "safe-check": "/safe-check",
    "safe-lost": "/safe-lost",
    "safe-rescue": "/safe-rescue",
    // Last, for it changes the journal.
    "tray-lost": `/tray/${tray}`,
  };
}

/** What is done on a screen before it is looked at. */
const doings = {
  async "fill-bottles-told"(app) {
    await app.press("button", "One more of 100 mL");
    await app.reads("more than there is");
  },
  async "tray-lost"(app) {
    await app.press("link", "Throw away");
    await app.fill("textbox", "Why", "Mould under the leaves after three days of rain");
    await app.press("button", "Throw it away");
    await app.reads("while it was drying");
  },
  async "use-drops"(app) {
    await app.press("radio", "Drops");
    await app.reads("Which dropper?");
  },
  async garden(app) {
    await app.press("button", "I have read this");
    await until("the garden from its top", () =>
      app.evaluate(() => document.activeElement.tagName === "H1" && scrollY === 0),
    );
  },
  async "fill-proposal"(app) {
    await app.press("button", /^Glycerite of fresh herb/);
    await app.reads("Pour these");
  },
};

/** What the places show before anything is in the book. */
const bare = {
  garden: "/garden",
  rack: "/rack",
  pantry: "/pantry",
  "start-tray": "/start-tray",
  fill: "/fill",
  recipes: "/recipes",
  droppers: "/droppers",
  due: "/due",
  plan: "/plan",
  shelf: "/shelf",
  season: "/season/2026",
  trace: "/trace",
  search: "/search?text=nothing",
  deeds: "/deeds",
};

const looks = [
  { width: 360, height: 740, dark: false, text: 1, withAxe: true },
  { width: 360, height: 740, dark: true, text: 1, withAxe: true },
  { width: 360, height: 740, dark: false, text: 2, withAxe: false },
  { width: 412, height: 915, dark: false, text: 1, withAxe: false },
  { width: 412, height: 915, dark: true, text: 1, withAxe: false },
];

for (const look of looks) {
  const { width, height, dark, text, withAxe } = look;
  const name = `${width}x${height}-${dark ? "dark" : "light"}${text === 1 ? "" : `-text-${text * 100}`}`;

  test(`${engine}: every screen holds at ${name}`, async (t) => {
    const app = await withApp(t, { width, height, dark, prepare: tellSeason });
    await mkdir(path.join(pictures, name), { recursive: true });
    await app.evaluate((size) => void (document.documentElement.style.fontSize = size), `${text * 100}%`);
    if (withAxe) await app.load(axe);

    const wrong = {};
    for (const [screen, address] of Object.entries(await addresses(app))) {
      await goTo(app, address);
      await doings[screen]?.(app);
      await app.picture(path.join(pictures, name, `${screen}.png`));
      const found = [...(await app.evaluate(geometry)), ...(withAxe ? await app.evaluate(barriers) : [])];
      if (found.length > 0) wrong[screen] = found;
    }
    assert.deepEqual(wrong, {}, JSON.stringify(wrong, null, 2));
  });
}

test(`${engine}: every screen of the page is measured`, async (t) => {
  const app = await withApp(t, { prepare: tellSeason });
  const measured = new Set(Object.values(await addresses(app)).map((address) => address.split(/[/?]/)[1]));
  const index = await readFile(file("ui", "src", "screens", "index.ts"), "utf8");
  const screens = [...index.split("export const screens")[1].matchAll(/^  "?([a-z-]+)"?: /gm)].map(([, name]) => name);
  assert.ok(screens.length > 40, "the list of screens was found");
  assert.deepEqual(screens.filter((name) => !measured.has(name)), []);
});

for (const text of [1, 2]) {
  test(`${engine}: every screen holds while the book is empty, with text at ${text * 100} %`, async (t) => {
    const app = await withApp(t, { width: 360, height: 740 });
    const name = `empty-text-${text * 100}`;
    await mkdir(path.join(pictures, name), { recursive: true });
    await app.evaluate((size) => void (document.documentElement.style.fontSize = size), `${text * 100}%`);
    await app.press("button", "I have read this");
    await app.load(axe);
    const wrong = {};
    for (const [screen, address] of Object.entries(bare)) {
      await goTo(app, address);
      await app.picture(path.join(pictures, name, `${screen}.png`));
      const found = [...(await app.evaluate(geometry)), ...(await app.evaluate(barriers))];
      if (found.length > 0) wrong[screen] = found;
    }
    assert.deepEqual(wrong, {}, JSON.stringify(wrong, null, 2));
  });
}

test(`${engine}: the measures see the faults that are planted`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740 });
  await goTo(app, "/more");
  await app.load(axe);
  assert.deepEqual([await app.evaluate(geometry), await app.evaluate(barriers)], [[], []], "without a fault");
  await app.evaluate(() => {
    const planted = document.createElement("div");
    planted.style.display = "flex";
    planted.style.width = "400px";
    for (const name of ["Small", "Near", "Pale", "Grey"]) {
      const button = document.createElement("button");
      button.textContent = name;
      Object.assign(button.style, { minWidth: "60px", minHeight: "60px", color: "#222", background: "#fff" });
      planted.append(button);
    }
    planted.children[0].style.minHeight = "0";
    planted.children[0].style.height = "30px";
    planted.children[1].style.marginRight = "20px";
    planted.children[2].style.color = "#888";
    planted.children[3].style.color = "#666";
    planted.append(document.createElement("input"));
    const squeezed = document.createElement("p");
    squeezed.textContent = "One letter a line";
    squeezed.style.width = "1em";
    document.querySelector("main").append(squeezed);
    document.querySelector("main").append(planted);
  });
  const measured = (await app.evaluate(geometry)).join("\n");
  assert.match(measured, /button "Small" is \d+ x 30 px/);
  assert.match(measured, /button "Small" and button "Near" are 0 px apart/);
  assert.match(measured, /"One letter a line" is squeezed/);
  assert.match(measured, /the page is \d+ px wide in 360 px/);
  const read = (await app.evaluate(barriers)).join("\n");
  assert.match(read, /^color-contrast: button/m);
  assert.match(read, /^color-contrast-enhanced: button/m);
  assert.match(read, /^label: input/m);
});
