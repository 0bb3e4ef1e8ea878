// From the strained jar to the empty bottle, and from wishes and words back to the plants.

import assert from "node:assert/strict";

import { engine, open, startWithSeason } from "./engine.mjs";
import { test } from "./tested.mjs";

async function openJar(app, name) {
  await open(app, "/pantry");
  await app.fill("searchbox", "Find a jar or a bottle", name);
  await app.press("link", new RegExp(`^${name}.*strain from`));
}

test(`${engine}: a jar is shaken, topped up, strained and bottled, and a bottle used, checked and given away`, async (t) => {
  const app = await startWithSeason(t);
  await openJar(app, "Calendula tincture");
  await app.reads("Not shaken yet");
  await app.press("button", "Shake");
  await app.reads("Shaking noted.");
  await app.reads("Shaken once, last on");

  await app.press("link", "Top up");
  await app.press("radio", /^Distilled water/);
  await app.fill("textbox", "How much", "10");
  await app.press("button", "Top it up");
  await app.reads("Topped up.");

  await app.press("link", "Strain");
  await app.reads("What should come out");
  await app.press("radio", "Pressed");
  await app.fill("textbox", "What came out", "150");
  await app.press("button", "Save straining");
  await app.reads("Straining saved.");
  await app.reads("Strained, not bottled yet");

  await app.press("link", "Fill bottles");
  for (const size of ["50 mL", "50 mL", "30 mL"]) await app.press("button", `One more of ${size}`);
  await app.reads("3 bottles, 130 mL in all");
  await app.reads("Left over in the jug: 20 mL");
  await app.press("button", "Fill them");
  await app.reads("Bottles filled.");

  await app.press("link", /^Calendula tincture 30 mL of 30 mL/);
  await app.press("link", "Use");
  await app.press("radio", "Teaspoons");
  await app.fill("textbox", "How many", "2");
  await app.press("button", "Take it off");
  await app.reads("Use noted.");
  await app.reads("20 mL");

  await app.press("link", "Check");
  await app.press("radio", "Good");
  await app.press("button", "Save check");
  await app.reads("Check noted.");

  await app.press("link", "Give away");
  await app.press("button", "Give it away");
  await app.sees("alert");
  await app.fill("textbox", "To whom", "the neighbours");
  await app.press("button", "Give it away");
  await app.reads("Given to the neighbours");
});

test(`${engine}: an oil past its date says so, offers no check, and is thrown away`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/due");
  await app.reads("First: this can do harm");
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
  await app.press("link", "Used up or thrown away");
  await app.fill("textbox", "How much of it", "5");
  await app.press("radio", "Used up");
  await app.fill("textbox", "What for", "tea");
  await app.press("button", "Write it down");
  await app.reads("5 g used up");
  await app.press("link", "Used up or thrown away");
  await app.press("radio", "Thrown away");
  await app.press("button", "Write it down");
  await app.sees("alert");
  await app.fill("textbox", "Why", "mouldy");
  await app.press("button", "Write it down");
  await app.reads(": mouldy");
  await app.press("button", "Undo");
  await app.sees("link", "Used up or thrown away");
});

test(`${engine}: more than came out cannot be filled`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/pantry");
  await app.press("link", /^Chamomile tincture Poured/);
  await app.press("link", "Fill bottles");
  await app.press("button", "Fill them");
  await app.reads("Bottles: say how many of which size.");
  await app.press("button", "One more of 100 mL");
  await app.reads("more than there is");
  await app.press("button", "Fill them");
  await app.sees("alert");
});

test(`${engine}: a strained marc is poured on again, and the jar made anew from this year's herb`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/pantry");
  await app.press("link", /^Chamomile tincture Poured/);
  await app.press("link", "Pour on the marc again");
  await app.reads("Liquid the marc kept");
  await app.reads("Pour these");
  await app.press("button", "Pour");
  await app.reads("Jar poured.");
  await app.reads("Second pouring on the marc of");

  await open(app, "/recipes");
  await app.press("link", "Make this");
  await app.reads("Pour these");
  await app.press("button", "Pour");
  await app.reads("Jar poured.");
});

test(`${engine}: wanted bottles are worked back to a day, and kept as a wish`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/plan");
  await app.sees("heading", "No wishes yet");
  await app.press("link", "Plan bottles");
  await app.press("button", "Work it out");
  await app.sees("alert");
  await app.fill("searchbox", "Herb", "lemon b");
  await app.press("button", "Lemon balm");
  await app.press("radio", "leaf");
  await app.choose("combobox", "What shall it become?", "Glycerite of dried herb");
  await app.fill("textbox", "Ready by", "2027-10-01");
  await app.press("button", "Work it out");
  await app.reads("Start on");
  await app.press("button", "Keep this wish");
  await app.reads("Wish kept.");
  await app.reads("6 bottles of 60 mL, Lemon balm, leaf");
  await app.press("button", /^Strike out 6 bottles/);
  await app.sees("heading", "No wishes yet");
});

test(`${engine}: a word is found wherever it stands, and a bed leads to whom its bottles went`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/rack");
  await app.press("link", "Search the book");
  await app.fill("searchbox", "Herb, Latin name, lot, note, person or bed", "long bed");
  await app.press("link", /^Long bed/);
  await app.reads("People to tell");
  await app.press("link", /^my sister/);
  await app.reads("Given to my sister");
  await app.reads("Back to the bed");
});
