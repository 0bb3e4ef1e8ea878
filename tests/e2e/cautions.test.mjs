// Cautions where they are read: one mark for each severity, with a word, and each sentence once.

import assert from "node:assert/strict";

import { engine, open, startWithSeason } from "./engine.mjs";
import { test } from "./tested.mjs";

/** The lists of cautions by the name of their severity; runs in the page. */
function marked() {
  return [...document.querySelectorAll("main ul[aria-label]")].map((list) => ({
    mark: list.getAttribute("aria-label"),
    said: [...list.querySelectorAll("li")].map((line) => line.textContent.trim()),
  }));
}

test(`${engine}: a herb's cautions stand under one mark for each severity, the gravest first`, async (t) => {
  const app = await startWithSeason(t, { width: 360, height: 740 });
  await open(app, "/herb/st-johns-wort");
  await app.sees("heading", "Cautions");
  await app.reads("Not for anyone who is pregnant.");
  const groups = await app.evaluate(marked);
  assert.equal(await app.evaluate(() => document.querySelectorAll("details:has(ul[aria-label]) > summary .sign").length), 2, "what is lighter is counted by its mark");
  assert.deepEqual(
    groups.map(({ mark }) => mark),
    ["Not for everyone", "Take care", "Good to know"],
  );
  const said = groups.flatMap((group) => group.said);
  assert.equal(new Set(said).size, said.length, "each sentence once");
  assert.ok(said.every((line) => !line.includes("not checked") && !line.includes("none specific")));
});

test(`${engine}: where one picks, weeds and gloves are said, and nothing of taking it`, async (t) => {
  const app = await startWithSeason(t, { width: 360, height: 740 });
  await open(app, "/pick?herb=nettle");
  await app.reads("Wear gloves: it stings until it is dry.");
  const said = (await app.evaluate(marked)).flatMap((group) => group.said);
  assert.ok(said.some((line) => line.startsWith("Weed the bed")));
  assert.ok(said.every((line) => !line.includes("pregnan")));
});

test(`${engine}: a herb of which no text was looked up says so`, async (t) => {
  const app = await startWithSeason(t, { width: 360, height: 740 });
  await open(app, "/herb/chickweed");
  await app.reads("We have no information on chickweed");
});
