// Every screen: photographed, measured, and read by axe, in light and dark and with text twice as large.

import assert from "node:assert/strict";
import { mkdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";

import { addresses, goTo } from "./addresses.mjs";
import { engine, withApp } from "./engine.mjs";
import { barriers, geometry } from "./measures.mjs";
import { file, tellSeason, until } from "./programs.mjs";
import { test } from "./tested.mjs";

const pictures = path.join(import.meta.dirname, "pictures", engine);
const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What is done on a screen before it is looked at. */
const doings = {
  async "fill-bottles-told"(app) {
    await app.press("button", "One more of 100 mL");
    await app.reads("short for these bottles");
  },
  async "tray-lost"(app) {
    await app.press("link", "Throw away");
    await app.fill("textbox", "Why", "Mould under the leaves after three days of rain");
    await app.press("button", "Throw it away");
    await app.reads("while it was drying");
  },
  async "due-by-week"(app) {
    await app.press("button", "By week");
    await app.reads("jars together");
  },
  async "use-drops"(app) {
    await app.press("radio", "Drops");
    await app.reads("Which dropper?");
  },
  async "fill-proposal"(app) {
    await app.press("button", /^Glycerite of fresh herb/);
    await app.sees("button", "Pour");
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
  { width: 360, height: 740, dark: false, text: 1, measures: [geometry, barriers] },
  { width: 360, height: 740, dark: false, text: 2, measures: [geometry] },
  { width: 412, height: 915, dark: false, text: 1, measures: [geometry] },
  // In the dark every thing stands where it stood: only its colours are others.
  { width: 412, height: 915, dark: true, text: 1, measures: [barriers] },
];

for (const look of looks) {
  const { width, height, dark, text, measures } = look;
  const name = `${width}x${height}-${dark ? "dark" : "light"}${text === 1 ? "" : `-text-${text * 100}`}`;

  test(`${engine}: every screen holds at ${name}`, async (t) => {
    const app = await withApp(t, { width, height, dark, prepare: tellSeason });
    await mkdir(path.join(pictures, name), { recursive: true });
    await app.evaluate((size) => void (document.documentElement.style.fontSize = size), `${text * 100}%`);
    if (measures.includes(barriers)) await app.load(axe);

    const wrong = {};
    for (const [screen, address] of Object.entries(await addresses(app))) {
      await goTo(app, address);
      await doings[screen]?.(app);
      await app.picture(path.join(pictures, name, `${screen}.png`));
      const found = [];
      for (const measure of measures) found.push(...(await app.evaluate(measure, dark)));
      if (found.length > 0) wrong[screen] = found;
    }
    assert.deepEqual(wrong, {}, JSON.stringify(wrong, null, 2));
  });
}

test(`${engine}: every screen of the page is measured`, async (t) => {
  const app = await withApp(t, { prepare: tellSeason });
  const measured = new Set(Object.values(await addresses(app)).map((address) => address.split(/[/?]/)[1]));
  const index = await readFile(file("ui", "src", "places", "index.ts"), "utf8");
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
    await app.load(axe);
    const wrong = {};
    await goTo(app, "/garden");
    await app.sees("button", "Open the book");
    await app.picture(path.join(pictures, name, "first-minute.png"));
    wrong["first-minute"] = [...(await app.evaluate(geometry)), ...(await app.evaluate(barriers))];
    if (wrong["first-minute"].length === 0) delete wrong["first-minute"];
    await app.press("button", "Open the book");
    await until("the garden from its top", () =>
      app.evaluate(() => document.activeElement.tagName === "H1" && scrollY === 0),
    );
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
  assert.match((await app.evaluate(barriers, true)).join("\n"), /^color-contrast: button/m);
  const read = (await app.evaluate(barriers)).join("\n");
  assert.match(read, /^color-contrast: button/m);
  assert.match(read, /^color-contrast-enhanced: button/m);
  assert.match(read, /^label: .*input/m);
});
