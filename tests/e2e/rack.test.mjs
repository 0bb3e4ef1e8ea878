// The rack doubts and says so: an odd weight is asked about before it is taken, and a tray at rest at its stop weight
// is probably dry, with the snap test and taking it down as what to do.

import assert from "node:assert/strict";
import { mkdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";

import { engine, open, withApp } from "./engine.mjs";
import { barriers, geometry } from "./measures.mjs";
import { asking, atRest, dried } from "./asked.mjs";
import { until } from "./programs.mjs";
import { test } from "./tested.mjs";

const pictures = path.join(import.meta.dirname, "pictures", engine);
const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** One tray at rest for days, its air never noted, and one that weighed 385 g yesterday. */
function rack(folder) {
  const ask = asking(folder);
  ask("setting.change", { cautions_seen: true });
  return { still: atRest(ask), early: dried(ask, "lemon balm", "herb", "Top tray", 450, [385]) };
}

for (const { dark, text, width, height } of [
  { dark: false, text: 1, width: 360, height: 740 },
  { dark: true, text: 1, width: 360, height: 740 },
  { dark: false, text: 2, width: 360, height: 740 },
  { dark: false, text: 1, width: 1280, height: 900 },
]) {
  const name = `${width}x${height}-${dark ? "dark" : "light"}${text === 1 ? "" : `-text-${text * 100}`}`;

  test(`${engine}: the rack asks about an odd weight and says what is probably dry at ${name}`, async (t) => {
    let ids;
    const prepare = async (folder) => void (ids = rack(folder));
    const app = await withApp(t, { width, height, dark, prepare });
    await mkdir(path.join(pictures, name), { recursive: true });
    const wrong = {};
    const look = async (screen) => {
      await app.picture(path.join(pictures, name, `${screen}.png`));
      const found = [...(await app.evaluate(geometry)), ...(text === 1 ? await app.evaluate(barriers) : [])];
      if (found.length > 0) wrong[screen] = found;
    };
    await app.load(axe);
    await app.evaluate((size) => void (document.documentElement.style.fontSize = size), `${text * 100}%`);

    await open(app, `/weigh/${ids.early}`);
    await app.fill("textbox", "The scale reads", "37");
    await app.press("button", "Save weight");
    await app.reads("37 g? The tray weighed 385 g yesterday.");
    await look("rack-odd");
    await app.press("button", "Enter it again");
    const focused = () => document.activeElement?.id;
    assert.equal(await app.evaluate(focused), "field-gross_g", "the field waits for the right figure");
    await app.fill("textbox", "The scale reads", "330");
    await app.press("button", "Save weight");
    await app.reads("Weight saved.");

    await open(app, "/rack");
    await app.reads("Probably dry");
    await app.reads("Try the snap test");
    await look("rack-probably-dry");
    await open(app, `/tray/${ids.still}`);
    await app.sees("heading", "Probably dry");
    await app.reads("Try the snap test, and take it down if it breaks.");
    const says = (words) => document.body.innerText.includes(words);
    assert.equal(await app.evaluate(says, "too early to say"), false);
    assert.equal(await app.evaluate(says, "Weigh again"), false, "there is nothing to wait for");
    await look("tray-probably-dry");

    await app.press("link", "Take it down");
    await app.reads("Its weight has stopped falling.");
    await app.press("checkbox", "Snap test: it breaks and crumbles");
    await look("tray-take-down");
    await app.press("button", "Take it down");
    await app.reads("Taken down. It's now in your dried stock.");

    await open(app, "/pick");
    await app.fill("searchbox", "Herb", "nettle");
    await app.press("button", /^Nettle/);
    await app.fill("textbox", "Weight on the scale", "64000");
    await app.press("button", "Save harvest");
    await app.reads("64 kg? A home seldom picks so much of one plant.");
    await look("pick-odd");
    await app.press("button", "Save it anyway");
    await app.reads("Harvest saved.");
    assert.deepEqual(wrong, {}, JSON.stringify(wrong, null, 2));
  });
}
