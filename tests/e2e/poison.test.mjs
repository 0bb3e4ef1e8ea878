// A poisonous plant is said to be one while its name is typed, in both languages, and every name finds its herb.

import assert from "node:assert/strict";
import { mkdir } from "node:fs/promises";
import path from "node:path";
import { test } from "./tested.mjs";

import { engine, open, startWithSeason } from "./engine.mjs";
import { geometry } from "./measures.mjs";
import { until } from "./programs.mjs";

const pictures = path.join(import.meta.dirname, "pictures", engine);
await mkdir(pictures, { recursive: true });

/** Holds the page to its width and keeps what it looks like. */
async function looked(app, name) {
  assert.deepEqual(await app.evaluate(geometry), [], name);
  await app.picture(path.join(pictures, `${name}.png`));
}

test(`${engine}: a poisonous plant is said to be one while it is typed as an herb of one's own`, async (t) => {
  const app = await startWithSeason(t, { width: 360, height: 740 });
  await open(app, "/own-herb");
  await app.fill("textbox", "Common name", "Fairy bells");
  await app.fill("textbox", "Latin name", "Digitalis purpurea");
  await app.reads("Foxglove is poisonous, and nothing is made of it.");
  await app.reads("Common Poisonous Plants of New England");
  await looked(app, "own-herb-stop");
  await app.fill("textbox", "Latin name", "");
  await app.fill("textbox", "Common name", "monks hod");
  await app.reads("Monkshood is poisonous, and nothing is made of it.");
  await app.fill("textbox", "Common name", "Lemon thyme");
  await until("no stop for a harmless herb", () => app.evaluate(() => !document.body.innerText.includes("poisonous")));
});

test(`${engine}: the stop speaks German too, in the dark`, async (t) => {
  const app = await startWithSeason(t, { width: 360, height: 740, dark: true });
  await open(app, "/settings");
  await app.press("radio", "Deutsch");
  await app.sees("heading", "Einstellungen");
  await open(app, "/own-herb");
  await app.fill("textbox", "Deutscher Name", "Fingerhutblätter");
  await app.reads("Roter Fingerhut ist giftig, daraus wird nichts hergestellt.");
  await looked(app, "own-herb-stop-german");
});

test(`${engine}: every name finds its herb where it is picked`, async (t) => {
  const app = await startWithSeason(t, { width: 360, height: 740 });
  await open(app, "/pick");
  for (const [typed, herb] of [
    ["elderberries", "Elder berry"],
    ["coneflower", "Echinacea"],
    ["pepermint", "Peppermint"],
    ["Brennnesseln", "Nettle"],
  ]) {
    await app.fill("searchbox", "Herb", typed);
    await app.sees("button", herb);
  }
  // Names that mean several herbs show them all.
  await app.fill("searchbox", "Herb", "mint");
  await app.sees("button", "Peppermint");
  await app.sees("button", "Spearmint");
  await looked(app, "pick-mint");
  await app.fill("searchbox", "Herb", "autumn crocus");
  await app.reads("Autumn crocus is poisonous, and nothing is made of it.");
  await looked(app, "pick-stop");
  // A herb that has a name in the book and nothing else becomes one of the maker's own, its Latin name filled in.
  await app.fill("searchbox", "Herb", "tumeric");
  await app.press("button", "Turmeric");
  assert.equal(await app.value("textbox", "Latin name"), "Curcuma longa");
  await looked(app, "pick-name-only");
});

test(`${engine}: what the list asks is answered by a deliberate yes before a jar is proposed`, async (t) => {
  const app = await startWithSeason(t, { width: 360, height: 740 });
  await open(app, "/own-herb");
  await app.fill("textbox", "Common name", "Black locust");
  await app.fill("textbox", "Parts you use", "bark");
  await app.press("button", "Add a herb");
  await app.reads("Herb added.");
  await app.reads("Black locust is harmful in some of its parts");
  await looked(app, "herb-page-ask");
  await open(app, "/fill");
  await app.sees("heading", "Which herbs?");
  await app.evaluate(() => [...document.querySelectorAll("summary")].find((one) => one.textContent.includes("Bought")).click());
  await app.fill("searchbox", "Herb", "black locust");
  await app.press("button", "Black locust");
  await app.press("radio", "dried");
  await app.press("button", /^Add black locust/i);
  await app.fill("textbox", "How much Black locust, bark, dried", "50");
  await app.reads("Black locust is harmful in some of its parts");
  await looked(app, "composer-asks");
  await app.press("checkbox", "I know this plant and this part for sure.");
  await app.reads("Tincture");
  await looked(app, "composer-confirmed");
});
