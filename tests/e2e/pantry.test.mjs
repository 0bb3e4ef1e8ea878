// From the strained jar to the empty bottle, and from wishes and words back to the plants.

import assert from "node:assert/strict";

import { engine, open, startWithSeason, unfold } from "./engine.mjs";
import { test } from "./tested.mjs";

async function openJar(app, name) {
  await open(app, "/pantry");
  await app.press("link", new RegExp(`^${name}.*strain from`));
}

test(`${engine}: a jar is shaken, topped up, strained and bottled, and a bottle used, checked and given away`, async (t) => {
  const app = await startWithSeason(t);
  await openJar(app, "Calendula tincture");
  await app.reads("Not shaken yet");
  await app.press("button", "Shake");
  await app.reads("Shaking saved.");
  await app.reads("Shaken once, last on");

  await app.press("button", "More");
  await app.press("link", "Top up");
  await app.press("radio", /^Distilled water/);
  await app.fill("textbox", "How much", "10");
  await app.press("button", "Top it up");
  await app.reads("Topped up.");

  await app.press("link", "Strain");
  await app.reads("Expected amount");
  await app.press("radio", "Pressed");
  await app.fill("textbox", "What came out", "150");
  await app.press("button", "Save straining");
  await app.reads("Straining saved.");
  await app.reads("Strained, not bottled yet");

  await app.press("link", "Bottle it");
  for (const size of ["50 mL", "50 mL", "30 mL"]) await app.press("button", `One more of ${size}`);
  await app.reads("3 bottles, 130 mL in all");
  await app.reads("Left over in the jug: 20 mL");
  await app.press("button", "Save bottles");
  await app.reads("Bottles saved.");

  await app.press("link", /^Calendula tincture 30 mL/);
  await app.press("link", "Use");
  await app.press("radio", "Teaspoons");
  await app.fill("textbox", "How many", "2");
  await app.press("button", "Save");
  await app.reads("Saved.");
  await app.reads("20 mL");

  await app.press("link", "Check");
  await app.press("radio", "Good");
  await app.press("button", "Save check");
  await app.reads("Check saved.");

  await app.press("link", "Give away");
  await app.press("button", "Save gift");
  await app.sees("alert");
  await app.fill("textbox", "Who gets it?", "the neighbours");
  await app.press("button", "Save gift");
  await app.reads("Given to the neighbours");
});

test(`${engine}: an oil past its date says so, offers no check, and is thrown away`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/due");
  await app.reads("Health risk first");
  await app.press("link", /^Throw away since .* Thyme in oil, for the kitchen \(/);
  await app.reads("Throw it away now");
  const offered = await app.evaluate(() =>
    [...document.querySelectorAll("a.button, button")].map((node) => node.textContent.trim()),
  );
  assert.ok(!offered.includes("Check"), "what botulism can hide in is never looked at, smelt or tasted");
  assert.ok(!offered.includes("Use"), "what is past its date is not used");
  await app.press("link", "Throw away");
  await app.press("button", "Past its date");
  await app.press("button", "Throw it away");
  await app.reads("Thrown away: Past its date");
  await app.press("button", "Undo");
  await app.reads("Throw it away now");
});

test(`${engine}: a dried lot is drunk as tea in part, the rest went mouldy, and comes back when that is taken back`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/rack");
  await app.press("link", /^Yarrow, .* dried left/);
  await app.press("button", "More");
  await app.press("link", "Use up or throw away");
  await app.fill("textbox", "How much of it", "5");
  await app.press("radio", "Used up");
  await app.fill("textbox", "What was it for?", "tea");
  await app.press("button", "Save");
  await app.reads("5 g · Used up");
  await app.press("button", "More");
  await app.press("link", "Use up or throw away");
  await app.press("radio", "Thrown away");
  await app.press("button", "Save");
  await app.sees("alert");
  await app.fill("textbox", "Why", "mouldy");
  await app.press("button", "Save");
  await app.reads(": mouldy");
  await app.press("button", "Undo");
  await app.reads("dried left");
  await app.press("button", "More");
  await app.sees("link", "Use up or throw away");
});

test(`${engine}: more than came out cannot be filled`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/pantry");
  await app.press("link", /^Chamomile tincture Poured/);
  await app.press("link", "Bottle it");
  await app.press("button", "Save bottles");
  await app.reads("Bottles: choose how many of each size.");
  await app.press("button", "One more of 100 mL");
  await app.reads("short for these bottles");
  await app.press("button", "Save bottles");
  await app.sees("alert");
});

test(`${engine}: a strained marc is poured on again, and the jar made anew from this year's herb`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/pantry");
  await app.press("link", /^Chamomile tincture Poured/);
  await app.press("button", "More");
  await app.press("link", "Steep the marc (pressed herb) again");
  await app.sees("button", "Pour");
  await unfold(app, ".supplies");
  await app.reads("Liquid still in the marc");
  await app.press("button", "Pour");
  await app.reads("Jar started.");
  await app.reads("Second maceration of the marc from");

  await open(app, "/recipes");
  await app.press("link", /4 of 5 stars$/);
  await app.press("link", "Make it");
  await app.press("button", "Pour");
  await app.reads("Jar started.");
});

test(`${engine}: wanted bottles are worked back to a day, and kept as a wish`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/plan");
  await app.sees("heading", "No plans yet");
  await app.press("link", "Plan bottles");
  await app.press("button", "Work it out");
  await app.sees("alert");
  await app.fill("searchbox", "Herb", "lemon b");
  await app.press("button", "Lemon balm");
  await app.press("radio", "leaf");
  await app.choose("combobox", "What do you want to make?", "Glycerite of dried herb");
  await app.fill("textbox", "Ready by", "2027-10-01");
  await app.press("button", "Work it out");
  await app.reads("Start on");
  await app.press("button", "Save plan");
  await app.reads("Plan saved.");
  await app.reads("6 bottles of 60 mL, Lemon balm, leaf");
  await app.press("button", /^Delete 6 bottles/);
  await app.sees("heading", "No plans yet");
});

test(`${engine}: a word is found wherever it stands, and a bed leads to whom its bottles went`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/rack");
  await app.press("link", "Search your records");
  await app.fill("searchbox", "Herb, Latin name, lot code, note, person or bed", "long bed");
  await app.press("link", /^Long bed/);
  await app.reads("People to warn");
  await app.press("link", /^my sister/);
  await app.reads("Given to my sister");
  await app.reads("Where it came from");
});
