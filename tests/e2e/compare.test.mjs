// Two jars beside each other, and what a maker knows of an herb of their own.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";

import { engine, open, startWithSeason, withApp } from "./engine.mjs";
import { barriers, geometry } from "./measures.mjs";
import { until } from "./programs.mjs";
import { test } from "./tested.mjs";

const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Runs in the page: the lines under a heading, with how long each is drawn. */
const linesUnder = (title) => {
  const heading = [...document.querySelectorAll("h2")].find((one) => one.textContent.trim() === title);
  return [...heading.parentElement.querySelectorAll("li")].map((line) => ({
    said: line.querySelector(".figures").textContent,
    // What is not known is not drawn; no engine hands over a NaN.
    drawn: line.querySelector("rect") && Number(line.querySelector("rect").getAttribute("width")),
  }));
};

test(`${engine}: jars of one kind stand beside each other, measure by measure`, async (t) => {
  const app = await startWithSeason(t, { width: 360, height: 740 });
  await app.press("link", "Pantry");
  await app.sees("heading", "Bottles");
  const id = await app.evaluate(() => {
    const links = [...document.querySelectorAll("a[href^='#/jar/']")];
    return links.find((one) => one.textContent.includes("Chamomile tincture")).hash.split("/")[2];
  });
  await open(app, `/jar/${id}`);
  await app.sees("heading", "Chamomile tincture");
  await app.press("button", "More");
  await app.press("link", "Compare with others");
  await app.sees("checkbox", /^Calendula tincture/);
  await app.press("checkbox", /^Calendula tincture/);
  await app.sees("heading", "Strength in the jar");

  const strengths = await app.evaluate(linesUnder, "Strength in the jar");
  assert.equal(strengths.length, 2);
  for (const { said, drawn } of strengths) {
    const [low, high = low] = said.match(/[\d.]+/g).map(Number);
    assert.ok(low - 1 <= drawn && drawn <= high + 1, `${said} is drawn ${drawn} of 100`);
  }
  const out = await app.evaluate(linesUnder, "What came out");
  assert.match(out[0].said, /mL, \d+\u00a0% of what was poured/);
  assert.deepEqual(out[1], { said: "Not known yet", drawn: null }, "the other is not strained yet");
  await app.load(axe);
  assert.deepEqual([await app.evaluate(geometry), await app.evaluate(barriers)], [[], []]);

  await app.press("checkbox", /^Calendula tincture/);
  await until("one alone to be compared with nothing", async () => !(await app.evaluate(() => document.body.textContent)).includes("Days on the herb"));
});

test(`${engine}: what is known of an own herb is kept, shown as one's own and mended`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740 });
  await app.press("button", "Open the book");
  await open(app, "/own-herb");
  await app.fill("textbox", "Common name", "Aunt's mint");
  await app.fill("textbox", "Parts you use", "leaf");
  await app.evaluate(() => document.querySelector("details summary").click());
  await app.fill("textbox", "Water when fresh, usual", "75");
  await app.press("button", "Add a herb");
  // Water takes all three figures.
  await app.sees("alert");
  await app.fill("textbox", "The least you found", "70");
  await app.fill("textbox", "The most you found", "80");
  await app.fill("textbox", "Strength it wants in the jar", "40");
  await app.fill("textbox", "Beware of", "It makes my hands itch.");
  await app.fill("textbox", "What it is mistaken for", "The weed by the gate has no scent.");
  await app.load(axe);
  assert.deepEqual([await app.evaluate(geometry), await app.evaluate(barriers)], [[], []]);
  await app.press("button", "Add a herb");
  await app.sees("heading", "What is known");
  await app.reads("It makes my hands itch.");
  await app.reads("70–80");

  await app.press("button", "More");
  await app.press("link", "Edit");
  await app.fill("textbox", "Beware of", "");
  await app.press("button", "Save changes");
  await app.sees("heading", "What is known");
  assert.ok(!(await app.evaluate(() => document.body.textContent)).includes("makes my hands itch"));
});
