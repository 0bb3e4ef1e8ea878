// How soon after the tap on Save a harvest stands on the page, on a phone and where the garden's list stands beside it.
// It is called with the folder of a journal that it may write into.

import { engine, open, withApp } from "./engine.mjs";
import { until } from "./programs.mjs";

/** The longest that 95 of a hundred saves may take, in milliseconds. */
const LONGEST = 50;
/** So many saves only warm what they run through, and are not counted. */
const WARMING = 5;
const ROUNDS = 40;

/** Where a saved harvest is looked for in the page, and what must be read there: without a text, its weight. */
const SAID = { what: "what says so", at: ".foot [role=status]", text: "Harvest saved." };
const PAGE = { what: "its own page", at: "main .mount.large" };
const LIST = { what: "the garden's list", at: ".list li[aria-posinset]" };

/** A phone goes on to the harvest's page; where there is room the list stands beside it. Others weigh whole grams. */
const screens = [
  { name: "phone", width: 412, height: 915, places: [SAID, PAGE], lightest: 600.1 },
  { name: "panes", width: 1280, height: 900, places: [LIST, PAGE], lightest: 700.1 },
];

/**
 * Runs in the page: after the next tap on Save, how long each of the places took to show what it is looked at for.
 *
 * It is counted from when the page hears the finger lift, which comes before the click: the way there, through what
 * drives the engine, is not the page's, and what the page does before the click is. What a frame finds in the page is
 * painted at its end, so the time is taken as the next one begins: at most a frame too long, never too short.
 */
function watch({ weight, places }) {
  const looks = places.map(({ at, text = weight }) => () =>
    [...document.querySelectorAll(at)].some((node) => node.textContent.replaceAll("\u00a0", " ").includes(text)),
  );
  if (looks.some((stands) => stands())) throw new Error(`what is saved with ${weight} stands there already`);
  window.saved = new Promise((resolve) => {
    function lifted({ target }) {
      if (!target.closest("button[type=submit]")) return;
      const from = performance.now();
      document.removeEventListener("pointerup", lifted, true);
      const found = looks.map(() => false);
      const took = looks.map(() => null);
      function look() {
        const now = performance.now();
        looks.forEach((stands, which) => {
          if (found[which]) took[which] ??= now - from;
          else found[which] = stands();
        });
        if (took.includes(null)) requestAnimationFrame(look);
        else resolve(took);
      }
      requestAnimationFrame(look);
    }
    document.addEventListener("pointerup", lifted, true);
  });
}

/** Fills a fresh form in and saves it; how long each place took. Of peppermint no look-alike has to be ruled out. */
async function save(app, places, grams) {
  await open(app, "/pick?herb=peppermint");
  await app.fill("textbox", "Weight on the scale", grams.toFixed(1));
  await app.reads("Dry, it will weigh about");
  await app.evaluate(watch, { weight: `${grams.toFixed(1)} g`, places });
  await app.press("button", "Save harvest");
  const took = await app.evaluate(() => window.saved);
  await app.reads("Harvest saved.");
  return took;
}

/** The time that so many of a hundred stay within. */
function quantile(times, percent) {
  const sorted = [...times].sort((one, other) => one - other);
  return sorted[Math.max(1, Math.ceil((sorted.length * percent) / 100)) - 1];
}

const ms = (number) => `${number.toFixed(1)} ms`;
let missed = false;

function row(what, times) {
  const most = quantile(times, 95);
  missed ||= most > LONGEST;
  const beside = `median of ${times.length}: ${ms(quantile(times, 50))}`;
  console.log(`| ${what}, p95 | ${ms(most)} | ${beside} | <= ${LONGEST} ms | ${most <= LONGEST ? "yes" : "**no**"} |`);
}

const folder = process.argv[2];
if (!folder) throw new Error("node saved.bench.mjs JOURNAL");
for (const { name, width, height, places, lightest } of screens) {
  const ends = [];
  const t = { after: (end) => ends.push(end) };
  try {
    const app = await withApp(t, { folder, width, height, lacks: true });
    const lists = () => document.querySelector("li[aria-posinset]") !== null;
    await until("a harvest in the garden", () => app.evaluate(lists));
    const rounds = [];
    for (let round = 0; round < WARMING + ROUNDS; round += 1) rounds.push(await save(app, places, lightest + round));
    const counted = rounds.slice(WARMING);
    places.forEach(({ what }, which) => {
      row(`${engine}, ${name}: tap on Save to ${what}`, counted.map((took) => took[which]));
    });
  } finally {
    for (const end of ends) await end();
  }
}
process.exit(missed ? 1 : 0);
