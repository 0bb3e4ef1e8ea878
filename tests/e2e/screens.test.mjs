// Every screen: photographed, measured, and read by axe, in light and dark and with text twice as large.

import assert from "node:assert/strict";
import { mkdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { test } from "node:test";

import { engine, withApp } from "./engine.mjs";
import { barriers, geometry, idBehind, stillToCome } from "./measures.mjs";
import { built, run, until } from "./programs.mjs";

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
  const behind = async (address, start) => {
    await goTo(app, address);
    const id = await until(`a link to ${start} on ${address}`, () => app.evaluate(idBehind, start));
    return id;
  };
  const harvest = await behind("/garden", "#/harvest/");
  const tray = await behind("/rack", "#/tray/");
  const weighing = await behind(`/tray/${tray}`, "#/weighing/");
  const jar = await behind("/pantry", "#/jar/");
  const herb = await behind("/herbs", "#/herb/");
  const fresh = await behind("/start-tray", "#/start-tray/");
  const supply = await behind("/shelf", "#/supply/");
  return {
    garden: "/garden",
    pick: "/pick",
    harvest: `/harvest/${harvest}`,
    "correct-harvest": `/correct-harvest/${harvest}`,
    bin: `/bin/${fresh}`,
    rack: "/rack",
    "start-tray": "/start-tray",
    "start-tray-of": `/start-tray/${fresh}`,
    tray: `/tray/${tray}`,
    weigh: `/weigh/${tray}`,
    "take-down": `/weigh/${tray}?last`,
    weighing: `/weighing/${weighing}?tray=${tray}`,
    "correct-tray": `/correct-tray/${tray}`,
    sample: `/sample/${tray}`,
    pantry: "/pantry",
    fill: "/fill",
    "fill-with": `/fill?lot=harvest:${fresh}`,
    jar: `/jar/${jar}`,
    "correct-jar": `/correct-jar/${jar}`,
    fail: `/fail/${jar}`,
    more: "/more",
    herbs: "/herbs",
    herb: `/herb/${herb}`,
    "own-herb": "/own-herb",
    shelf: "/shelf",
    supply: `/supply/${supply}`,
    "new-supply": "/supply",
    settings: "/settings",
    deeds: "/deeds",
  };
}

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
    const prepare = (folder) => run(built("debug", "dev"), ["demo", "--into", folder]);
    const app = await withApp(t, { width, height, dark, prepare });
    await mkdir(path.join(pictures, name), { recursive: true });
    await app.evaluate((size) => void (document.documentElement.style.fontSize = size), `${text * 100}%`);
    if (withAxe) await app.load(axe);

    const wrong = {};
    for (const [screen, address] of Object.entries(await addresses(app))) {
      await goTo(app, address);
      await app.picture(path.join(pictures, name, `${screen}.png`));
      const found = [...(await app.evaluate(geometry)), ...(withAxe ? await app.evaluate(barriers) : [])];
      if (found.length > 0) wrong[screen] = found;
    }
    assert.deepEqual(wrong, {}, JSON.stringify(wrong, null, 2));
  });
}
