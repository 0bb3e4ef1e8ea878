// What cannot be seen in a picture: the keyboard, the focus, forced colours, motion. Chromium can pretend the last two.

import assert from "node:assert/strict";

import { engine, startWithSeason, withApp } from "./engine.mjs";
import { until } from "./programs.mjs";
import { test } from "./tested.mjs";

const inBrowser = { skip: engine === "browser" ? false : "only Chromium is given keys and media" };

/** Runs in the page: what has the focus, by tag and name. */
function focused() {
  const node = document.activeElement;
  const name = node.getAttribute("aria-label") ?? node.labels?.[0]?.textContent ?? node.textContent;
  return { tag: node.tagName, name: name.trim().replace(/\s+/g, " "), isShown: node.matches(":focus-visible") };
}

/** Goes on by Tab alone until something of this name has the focus, which must be visible all along. */
async function tabTo(app, name) {
  const passed = [];
  for (let step = 0; step < 60; step += 1) {
    await app.key("Tab");
    const at = await app.evaluate(focused);
    assert.ok(at.tag === "BODY" || at.isShown, `the focus on "${at.name}" is not shown`);
    if (at.name.startsWith(name)) return at;
    passed.push(at.name.slice(0, 30));
  }
  throw new Error(`Tab never came to "${name}", but to ${passed.join(" | ")}`);
}

async function type(app, text) {
  for (const letter of text) await app.key(letter);
}

const heading = (app, name) =>
  until(`the heading ${name} with the focus`, async () => {
    const at = await app.evaluate(focused);
    return at.tag === "H1" && at.name === name;
  });

test("browser: with the keyboard alone an herb is picked, mistaken, corrected and saved", inBrowser, async (t) => {
  const app = await withApp(t);
  await tabTo(app, "Open the book");
  await app.key("Enter");
  await heading(app, "Garden");
  await tabTo(app, "Pick");
  await app.key("Enter");
  await heading(app, "Pick");
  await tabTo(app, "Herb");
  await type(app, "pepperm");
  // What is found stands above the field that it was sought with.
  // Each letter asks anew; what the last one found is peppermint alone.
  await until("peppermint alone is found", () =>
    app.evaluate(() => document.querySelectorAll('[aria-labelledby="herbs-shown"] button').length === 1),
  );
  await app.key("Shift+Tab");
  assert.match((await app.evaluate(focused)).name, /^Peppermint/);
  await app.key("Enter");
  await tabTo(app, "Weight on the scale");
  await type(app, "much");
  await app.key("Enter");
  await until("the summary with the focus", () =>
    app.evaluate(() => document.activeElement.getAttribute("role") === "alert"),
  );
  await tabTo(app, "Weight on the scale: enter a number");
  await app.key("Enter");
  assert.equal((await app.evaluate(focused)).name, "Weight on the scale", "the message leads to its field");
  await app.key("Control+a");
  await type(app, "250");
  await tabTo(app, "Save harvest");
  await app.key("Enter");
  await app.reads("Harvest saved.");
  await heading(app, "Peppermint");
  await app.reads("250 g");
});

test(`${engine}: going on and back, the focus comes to the heading`, async (t) => {
  const app = await startWithSeason(t);
  for (const place of ["Rack", "Pantry", "More", "Garden"]) {
    await app.press("link", place);
    await heading(app, place);
  }
  await app.press("link", "More");
  await app.press("link", /^Settings/);
  await heading(app, "Settings");
  await app.press("button", "Back");
  await heading(app, "More");
});

test("browser: in forced colours what is chosen, where one is and what is main are told without colour", inBrowser, async (t) => {
  const app = await startWithSeason(t);
  await app.emulate({ forcedColors: "active" });
  const edges = await app.evaluate(() => {
    const of = (selector) => getComputedStyle(document.querySelector(selector));
    return {
      here: of("nav a[aria-current]").borderTopColor,
      there: of("nav a:not([aria-current])").borderTopColor,
      main: of(".button.main").borderTopWidth,
    };
  });
  assert.notEqual(edges.here, edges.there);
  assert.equal(edges.main, "3px");
  await app.press("link", "Pick");
  await app.reads("How wet was it?");
  const choice = await app.evaluate(() => {
    const [chosen, other] = [":checked", ":not(:checked)"].map((state) =>
      getComputedStyle(document.querySelector(`input[type=radio]${state} + span`)),
    );
    return { chosen: chosen.borderTopWidth, other: other.borderTopWidth };
  });
  assert.notEqual(choice.chosen, choice.other);
  const unframed = await app.evaluate(() =>
    [...document.querySelectorAll("main .button, main .entry")]
      .filter((node) => getComputedStyle(node).borderTopStyle === "none" || getComputedStyle(node).borderTopWidth === "0px")
      .map((node) => node.textContent.trim()),
  );
  assert.deepEqual(unframed, [], "every control has an edge of its own");
});

/** Runs in the page: what moves, by its name. */
function moving() {
  return [...document.querySelectorAll("*")]
    .filter((node) => {
      const style = getComputedStyle(node);
      const lasts = (text) => text.split(",").some((each) => parseFloat(each) > 0);
      return lasts(style.transitionDuration) || (style.animationName !== "none" && lasts(style.animationDuration));
    })
    .map((node) => node.tagName);
}

test("browser: nothing moves where the system asks for no motion", inBrowser, async (t) => {
  const app = await startWithSeason(t);
  await app.press("link", "Pick");
  await app.reads("How wet was it?");
  await app.emulate({ reducedMotion: "no-preference" });
  assert.notDeepEqual(await app.evaluate(moving), [], "otherwise a fold turns its arrow");
  await app.emulate({ reducedMotion: "reduce" });
  for (const place of ["/pick", "/garden", "/rack", "/pantry", "/settings", "/fill", "/due", "/season/2026", "/safe"]) {
    await app.evaluate((address) => void (location.hash = address), place);
    await until(`${place} is there`, () => app.evaluate(() => document.querySelector("h1") !== null));
    assert.deepEqual(await app.evaluate(moving), [], place);
  }
});

test("browser: a shaken jar tilts once for 300 ms and bears a tick for today; without motion it bears the tick alone", inBrowser, async (t) => {
  const app = await startWithSeason(t);
  const ticked = () => (document.querySelector("figure path.today")?.getAttribute("d") ?? "") !== "";
  await app.evaluate(() => {
    window.tilts = [];
    addEventListener("animationstart", ({ target }) => window.tilts.push(getComputedStyle(target).animationDuration));
  });
  await app.emulate({ reducedMotion: "no-preference" });
  const shaken = async (jar) => {
    await app.press("link", "Pantry");
    await app.press("link", jar);
    await app.reads("Not shaken yet");
    assert.equal(await app.evaluate(ticked), false);
    await app.press("button", "Shake");
    await app.reads("Shaken once, last on");
    await until("today's tick", () => app.evaluate(ticked));
    await app.press("button", "Back");
  };
  await shaken(/^Calendula tincture.*strain from/);
  assert.deepEqual(await app.evaluate(() => window.tilts), ["0.3s"]);
  await app.emulate({ reducedMotion: "reduce" });
  await shaken(/^Sage glycerite.*strain from/);
  assert.deepEqual(await app.evaluate(() => window.tilts), ["0.3s"], "with no motion nothing tilts");
});
