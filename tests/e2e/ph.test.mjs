// A measured pH, in German with its decimal comma: asked for where acid keeps the liquid, and told where it decides.

import assert from "node:assert/strict";
import { mkdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";

import { asking } from "./asked.mjs";
import { engine, open, withApp } from "./engine.mjs";
import { barriers, geometry } from "./measures.mjs";
import { test } from "./tested.mjs";

const pictures = path.join(import.meta.dirname, "pictures", engine);
const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Two bottles of a vinegar, one of a tincture, and a vinegar that is to be strained. */
function shelf(folder) {
  const ask = asking(folder);
  const pour = (preparation, stock) => {
    const plants = [{ herb: "sage", part: "leaf", state: "dried", mass_g: 50 }];
    return ask("jar.pour", { composition: { preparation, plants, stock } }).jar.id;
  };
  const fill = (jar, count) => {
    ask("jar.strain", { jar, came_out_ml: 60 * count, how: "dripped" });
    return ask("bottle.fill", { jar, bottles: [{ ml: 60, count }] }).bottles.map(({ id }) => id);
  };
  const cider = [{ kind: "vinegar", acidity_g_per_100ml: 5 }];
  ask("setting.change", { cautions_seen: true });
  const jar = pour("vinegar", cider);
  const sour = fill(jar, 2);
  const spirit = [{ kind: "spirit", strength_percent_vol: 60 }, { kind: "water" }];
  const [tincture] = fill(pour("tincture", spirit), 1);
  return { jar, sour, tincture, steeping: pour("vinegar", cider) };
}

for (const { dark, text } of [
  { dark: false, text: 1 },
  { dark: true, text: 1 },
  { dark: false, text: 2 },
]) {
  const name = `360x740-${dark ? "dark" : "light"}${text === 1 ? "" : `-text-${text * 100}`}`;

  test(`${engine}: a measured pH is written down and told at ${name}`, async (t) => {
    let ids;
    const prepare = async (folder) => void (ids = shelf(folder));
    const app = await withApp(t, { width: 360, height: 740, dark, prepare });
    await mkdir(path.join(pictures, name), { recursive: true });
    const wrong = {};
    const look = async (screen) => {
      await app.picture(path.join(pictures, name, `${screen}.png`));
      const found = [...(await app.evaluate(geometry)), ...(text === 1 ? await app.evaluate(barriers) : [])];
      if (found.length > 0) wrong[screen] = found;
    };
    await open(app, "/settings");
    await app.press("radio", "Deutsch");
    await app.sees("heading", "Einstellungen");
    await app.load(axe);
    await app.evaluate((size) => void (document.documentElement.style.fontSize = size), `${text * 100}%`);

    await open(app, `/check/${ids.tincture}`);
    await app.sees("radio", "Gut");
    const asked = () => document.body.innerText.includes("pH, falls gemessen");
    assert.equal(await app.evaluate(asked), false, "acid keeps no tincture");

    await open(app, `/strain/${ids.steeping}`);
    await app.fill("textbox", "pH, falls gemessen", "3,2");
    await app.press("radio", "Streifen");
    await look("ph-strain");

    await open(app, `/bottle/${ids.sour[0]}`);
    await app.press("link", "Prüfen");
    await app.press("radio", "Gut");
    await app.fill("textbox", "pH, falls gemessen", "48");
    await app.press("button", "Prüfung speichern");
    await app.sees("alert");
    await app.reads("zwischen 0 und 14");
    await app.fill("textbox", "pH, falls gemessen", "4,8");
    await app.press("radio", "Messgerät");
    await look("ph-check");
    await app.press("button", "Prüfung speichern");
    await app.reads("Verlass dich nicht darauf, dass die Säure schützt");
    await app.reads("wurde pH 4,8 gemessen. Über 4,6 schützt die Säure nicht mehr");
    await app.reads("4,7–4,9");
    await look("ph-bottle");

    // The other bottle holds the same liquid.
    await open(app, `/bottle/${ids.sour[1]}`);
    await app.reads("Noch darin");
    await look("ph-other-bottle");
    const terms = () => [...document.querySelectorAll("dt")].find((node) => node.textContent === "pH, gemessen");
    await app.evaluate(`(${terms})().scrollIntoView()`);
    await look("ph-other-bottle-facts");
    await open(app, `/give/${ids.sour[1]}`);
    await app.reads("Verlass dich nicht darauf, dass die Säure schützt");
    await look("ph-give");
    await open(app, `/use/${ids.sour[1]}`);
    await app.reads("Verlass dich nicht darauf, dass die Säure schützt");
    await open(app, `/jar/${ids.jar}`);
    await app.reads("Verlass dich nicht darauf, dass die Säure schützt");
    await look("ph-jar");
    await open(app, "/due");
    await app.reads("verbrauch es in wenigen Tagen, oder wirf es weg");
    await look("ph-due");
    await open(app, "/pantry");
    await app.reads("Verlass dich nicht darauf, dass die Säure schützt");
    await look("ph-pantry");
    assert.deepEqual(wrong, {}, JSON.stringify(wrong, null, 2));
  });
}
