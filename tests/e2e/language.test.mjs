// A language of one's own choice: kept on the device, in the words of the page and of the core.

import assert from "node:assert/strict";

import { engine, open, unfold, withApp } from "./engine.mjs";
import { idBehind } from "./measures.mjs";
import { tellSeason, until } from "./programs.mjs";
import { test } from "./tested.mjs";

test(`${engine}: German is chosen in the settings, said by page and core, and kept`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740 });
  await app.press("button", "Open the book");
  await app.press("link", "More");
  await app.press("link", /^Settings/);
  await app.press("radio", "Deutsch");
  await app.sees("heading", "Einstellungen");
  await app.press("button", "Zurück");
  await app.press("link", /^Pflanzen/);
  await app.sees("link", /^Melisse/);
  await app.press("link", /^Melisse/);
  await app.sees("heading", "Melisse");
  await unfold(app, "details");
  await app.reads("ätherisches Öl, Rosmarinsäure, Flavonoide");
  await app.evaluate(() => location.reload()).catch(() => {});
  await app.sees("heading", "Melisse");

  await app.evaluate(() => (location.hash = "#/settings"));
  await app.press("radio", "English");
  await app.sees("heading", "Settings");
});

/** A plant's part as the wire names it, behind the plant's own name: "Salbei, leaf". */
const RAW_PART = /, (?:leaf|root|flower|flowering tops|berry|petal|hip)(?=[,\n]|$)/;

test(`${engine}: a part of a plant is named in German wherever the plant is`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740, prepare: tellSeason });
  await app.evaluate(() => void localStorage.setItem("language", "de"));
  await app.evaluate(() => location.reload()).catch(() => {});
  await app.sees("link", "Ernten");
  const behind = async (address, start, ...words) => {
    await open(app, address);
    return until(`a link to ${start} on ${address}`, () => app.evaluate(idBehind, { start, words }));
  };
  const fresh = await behind("/start-tray", "#/start-tray/");
  const dried = await behind("/rack", "#/tray/", "getrocknet");
  const strained = await behind("/pantry", "#/jar/", "Chamomile tincture");
  const screens = {
    [`/cook/harvest/${fresh}`]: "Salbei, Blatt",
    [`/cook/tray/${dried}`]: "Baldrian, Wurzel",
    [`/again/jar/${strained}`]: "Echte Kamille, Blüte",
    [`/again/marc/${strained}`]: "Echte Kamille, Blüte",
    [`/jar/${strained}`]: "Echte Kamille, Blüte",
    "/rack": "Rosmarin, Blatt",
    "/fill": "Salbei, Blatt",
  };
  for (const [address, told] of Object.entries(screens)) {
    await open(app, address);
    const shown = () => app.evaluate(() => document.querySelector("main").textContent);
    await until(`"${told}" on ${address}`, async () => (await shown()).includes(told));
    assert.doesNotMatch(await app.evaluate(() => document.querySelector("main").innerText), RAW_PART, address);
  }
});
