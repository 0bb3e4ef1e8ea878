// The app in a strange language: every letter of its own words accented and each word 40 % longer, so that a sentence of
// page or core that did not come from the words is seen, and one that has no room.

import assert from "node:assert/strict";
import { readFile, readdir } from "node:fs/promises";

import { addresses, goTo } from "./addresses.mjs";
import { CODE, asking } from "./asked.mjs";
import { engine, unfold, withApp } from "./engine.mjs";
import { geometry } from "./measures.mjs";
import { file, tellSeason, until } from "./programs.mjs";
import { test } from "./tested.mjs";

const PHONE = { width: 360, height: 740 };

/** Screens while nothing of the maker's is in the book. */
const bare = ["/garden", "/pick", "/rack", "/pantry", "/fill", "/shelf", "/supply", "/plan", "/plan-bottles", "/due", "/deeds"];
const more = ["/safe", "/safe-restore", "/droppers", "/recipes", "/season", "/search", "/trace", "/beds", "/own-herb"];

/** The fields of a request that the maker writes in words of their own. */
const written = ["name", "note", "stage", "place", "reason", "to", "liquid"];

/** What the maker wrote: all that the season was told, the names of its photos, those that jars got when they were poured, and that of a card. */
async function ownWords(folder) {
  const season = JSON.parse(await readFile(file("demo-data", "season.json"), "utf8"));
  const ask = asking(folder);
  const named = [...ask("jar.list", {}).jars, ask("recipe.read_code", { text: CODE })];
  const photos = season.flatMap(({ request }) => request.photos ?? []).map((name) => name.split("/").at(-1));
  return [...season.flatMap(({ request }) => written.flatMap((field) => request[field] ?? [])), ...named.map(({ name }) => name), ...photos];
}

/** The months and the days of the week, which no language of ours holds: each engine knows them. */
const calendar = Array.from({ length: 12 }, (_, at) => [
  new Intl.DateTimeFormat("en", { month: "long" }).format(new Date(2026, at)),
  new Intl.DateTimeFormat("en", { weekday: "long" }).format(new Date(2026, 0, 1 + at)),
]).flat();

/** What stands in every language as it is printed: the Latin names of plants, and the titles of the sources. */
async function printed() {
  const data = file("src-tauri", "crates", "formulary", "data");
  const tables = (await readdir(data)).filter((name) => name.endsWith(".tsv"));
  const cells = await Promise.all(
    tables.map(async (name) => {
      const [head, ...rows] = (await readFile(`${data}/${name}`, "utf8")).trimEnd().split("\n").map((row) => row.split("\t"));
      const kept = head.flatMap((column, at) => (/^latin$|source$/.test(column) ? [at] : []));
      return rows.flatMap((row) => kept.map((at) => row[at] ?? ""));
    }),
  );
  const preparations = await readFile(`${data}/preparations.toml`, "utf8");
  const sources = [...preparations.matchAll(/source = "([^"]*)"/g)].map(([, source]) => source);
  // What a source says there follows its title in brackets, and elsewhere it stands without.
  return [...cells.flat(), ...sources, ...sources.map((source) => source.split(" (")[0])];
}

/**
 * Runs in the page: texts of at least two plain words of four letters beside what is known, which no entry of the strange
 * language has.
 */
function plainTexts(known) {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found = [];
  while (walker.nextNode()) {
    const { parentElement, data } = walker.currentNode;
    if (!parentElement.checkVisibility() || parentElement.closest("script, style, option")) continue;
    const text = data.replaceAll("\u00a0", " ");
    const rest = known.reduce((left, one) => left.replaceAll(one, " "), text);
    if ((rest.match(/(?<![\p{L}~])[a-zA-Z]{4,}(?![\p{L}~])/gu) ?? []).length >= 2) found.push(text.trim());
  }
  return found;
}

/** Has the page loaded anew in the strange language. */
async function speakStrangely(app) {
  await app.evaluate(() => {
    localStorage.setItem("language", "en-XA");
    location.reload();
  }).catch(() => {});
  const isStrange = () => document.documentElement.lang === "en-XA" && document.body.innerText.includes("~");
  await until("the strange language", () => app.evaluate(isStrange).catch(() => false));
}

/** Goes through screens with their folds shut and open; the answer is what is wrong, by screen. */
async function walk(app, screens, known, doings = {}) {
  const longestFirst = [...new Set(known)].filter((text) => text.length > 3).sort((one, other) => other.length - one.length);
  const wrong = {};
  for (const [screen, address] of screens) {
    await goTo(app, address);
    await doings[screen]?.(app);
    const found = await app.evaluate(geometry);
    await unfold(app, "details");
    found.push(...(await app.evaluate(plainTexts, longestFirst)), ...(await app.evaluate(geometry)));
    if (found.length > 0) wrong[screen] = [...new Set(found)];
  }
  return wrong;
}

test(`${engine}: in a strange language an empty book shows no sentence that is not of the words, and all have room`, async (t) => {
  const app = await withApp(t, PHONE);
  await speakStrangely(app);
  await app.press("button", /bóóķ/);
  const wrong = await walk(app, [...bare, ...more].map((address) => [address, address]), []);
  assert.deepEqual(wrong, {}, JSON.stringify(wrong, null, 2));
});

const shows = (app, selector) => until(selector, () => app.evaluate((selector) => document.querySelector(selector) !== null, selector));

/** What is done on a screen before it is looked at. */
const doings = {
  async "fill-proposal"(app) {
    await shows(app, "article button");
    await app.evaluate(() => document.querySelector("article button").click());
    await shows(app, ".answer .sign");
  },
  async "due-by-week"(app) {
    await app.press("button", /^Bý~ ŵééķ/);
    await shows(app, "main h3");
  },
  async "use-drops"(app) {
    await app.press("radio", /^Ďŕópś/);
    await shows(app, "main input[name=dropper]");
  },
};

test(`${engine}: in a strange language a told season shows no sentence that is not of the words, and all have room`, async (t) => {
  let own = [];
  const prepare = async (folder) => {
    await tellSeason(folder);
    own = await ownWords(folder);
  };
  const app = await withApp(t, { ...PHONE, prepare });
  const screens = await addresses(app);
  await speakStrangely(app);
  const wrong = await walk(app, Object.entries(screens), [...own, ...calendar, ...(await printed())], doings);
  assert.deepEqual(wrong, {}, JSON.stringify(wrong, null, 2));
});
