// A garden of ten thousand harvests opens and scrolls like one of fifty. Chromium alone tells how long its tasks were.

import assert from "node:assert/strict";
import { test } from "node:test";

import { engine, open, startWithSeason, withApp } from "./engine.mjs";
import { until } from "./programs.mjs";

/** The goals: how much longer ten thousand may take than fifty, and the longest task, in milliseconds. */
const RATIO = 1.3;
const LONGEST_TASK = 50;
const ROUNDS = 20;
const FRAMES = 240;

const herbs = [
  ["calendula", "flower"],
  ["peppermint", "leaf"],
  ["sage", "leaf"],
  ["lavender", "flower"],
];

/** Picks of as many days, newest last, as a table that the app takes in as one deed. */
function table(count) {
  const lines = Array.from({ length: count }, (_, at) => {
    const day = new Date(Date.UTC(1996, 0, 1 + at)).toISOString().slice(0, 10);
    const [herb, part] = herbs[at % herbs.length];
    return `${day},${herb},${part},${100 + (at % 400)}`;
  });
  return ["picked_at,herb,part,gross_g", ...lines].join("\n");
}

/** Runs in the page: takes a table in, and says that the cautions were read. */
async function takeIn(text) {
  const call = async (command, request) => {
    const headers = { "content-type": "application/json" };
    const answer = await fetch(`/call/${command}`, { method: "POST", headers, body: JSON.stringify(request) });
    const { reply, failure } = await answer.json();
    if (failure) throw new Error(`${command}: ${failure.message}`);
    return reply;
  };
  const { file } = await call("file.chunk", { upload: "picks", base64: btoa(text), first: true });
  await call("import.apply", { file });
  await call("setting.change", { cautions_seen: true });
}

/** Runs in the page that was just opened on More: to the garden, until its first sheet is painted. */
async function openGarden() {
  const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const tasks = [];
  const watching = new PerformanceObserver((list) => tasks.push(...list.getEntries()));
  watching.observe({ type: "longtask" });
  await new Promise((resolve) => setTimeout(resolve, 100));
  const from = performance.now();
  location.hash = "/garden";
  while (!document.querySelector("li[aria-posinset]")) await frame();
  await frame();
  const took = performance.now() - from;
  await new Promise((resolve) => setTimeout(resolve, 150));
  watching.disconnect();
  return { took, longest: Math.max(0, ...tasks.map((task) => task.duration)) };
}

/** Runs in the page: scrolls down and, where there is no more, up again; the frames and the longest task. */
async function scrollGarden(frames) {
  const tasks = [];
  const watching = new PerformanceObserver((list) => tasks.push(...list.getEntries()));
  watching.observe({ type: "longtask" });
  const times = [];
  let down = 1;
  let last = await new Promise((resolve) => requestAnimationFrame(resolve));
  for (let at = 0; at < frames; at += 1) {
    scrollBy(0, 160 * down);
    const most = document.documentElement.scrollHeight - innerHeight;
    if (scrollY >= most - 1) down = -1;
    if (scrollY <= 0) down = 1;
    const now = await new Promise((resolve) => requestAnimationFrame(resolve));
    times.push(now - last);
    last = now;
  }
  await new Promise((resolve) => setTimeout(resolve, 150));
  watching.disconnect();
  times.sort((one, other) => one - other);
  return {
    mean: times.reduce((sum, time) => sum + time, 0) / times.length,
    longest: Math.max(0, ...tasks.map((task) => task.duration)),
  };
}

/** Runs in the page: scrolls until so many were shown; how long the list says it is then. */
async function lookDownTo(count) {
  const end = performance.now() + 60_000;
  while (performance.now() < end) {
    scrollTo(0, document.documentElement.scrollHeight);
    await new Promise((resolve) => requestAnimationFrame(resolve));
    const last = [...document.querySelectorAll("li[aria-posinset]")].at(-1);
    if (Number(last?.getAttribute("aria-posinset")) >= count) return last.getAttribute("aria-setsize");
  }
  throw new Error(`${count} were never shown`);
}

const isBrowser = () => ({ skip: engine === "browser" ? false : "only Chromium tells of long tasks" });

/** What else the machine does makes a round longer and never shorter, so the best quarter counts. */
function best(times) {
  const quarter = [...times].sort((one, other) => one - other).slice(0, Math.ceil(times.length / 4));
  return quarter.reduce((sum, time) => sum + time, 0) / quarter.length;
}

async function garden(t, count) {
  const app = await withApp(t);
  await app.evaluate(takeIn, table(count));
  return app;
}

/** A first look at the garden, with nothing remembered from an earlier one. */
async function firstLook(app) {
  await app.evaluate(() => void (location.hash = "/more"));
  await app.reload();
  await until("More", () => app.evaluate(() => document.querySelector("nav a[aria-current][href='#/more']") !== null));
  return app.evaluate(openGarden);
}

test("browser: a garden of ten thousand harvests is as quick as one of fifty", isBrowser(), async (t) => {
  const few = await garden(t, 50);
  const many = await garden(t, 10_000);

  await t.test("it opens and scrolls like fifty", async (t) => {
    // Turn by turn, so that what else the machine does falls on both.
    const opened = { few: [], many: [] };
    const scrolled = { few: [], many: [] };
    for (let round = 0; round < ROUNDS; round += 1) {
      opened.few.push(await firstLook(few));
      opened.many.push(await firstLook(many));
    }
    for (let round = 0; round < 3; round += 1) {
      scrolled.few.push(await few.evaluate(scrollGarden, FRAMES));
      scrolled.many.push(await many.evaluate(scrollGarden, FRAMES));
    }
    const paint = (rounds) => best(rounds.map(({ took }) => took));
    const frame = (rounds) => best(rounds.map(({ mean }) => mean));
    // A task that the list itself causes is there in every round; a hiccup of the machine is not.
    const task = (rounds) => Math.min(...rounds.map(({ longest }) => longest));
    const told = {
      "first paint, ms": [paint(opened.few), paint(opened.many)],
      "frame while scrolling, ms": [frame(scrolled.few), frame(scrolled.many)],
      "longest task, ms": [
        Math.max(task(opened.few), task(scrolled.few)),
        Math.max(task(opened.many), task(scrolled.many)),
      ],
    };
    for (const [what, [small, large]] of Object.entries(told)) {
      t.diagnostic(`${what}: ${small.toFixed(1)} with 50, ${large.toFixed(1)} with 10,000`);
    }
    assert.ok(paint(opened.many) <= RATIO * paint(opened.few), "first paint");
    assert.ok(frame(scrolled.many) <= RATIO * frame(scrolled.few), "scrolling");
    assert.ok(told["longest task, ms"][1] <= LONGEST_TASK, "longest task");
  });

  await t.test("the page stays small however far is looked, and the way back leads to the same place", async () => {
    await firstLook(many);
    const nodes = () => many.evaluate(() => document.querySelectorAll("main *").length);
    const atFirst = await nodes();
    assert.equal(await many.evaluate(lookDownTo, 1_500), "-1", "how many there are is not known on the way");
    // Each stretch far from the screen is one empty block; at most one for every two sheets that were passed.
    const after = await nodes();
    assert.ok(after < atFirst * 2 + 750, `${atFirst} nodes became ${after}`);
    const link = await many.evaluate(() => {
      const last = [...document.querySelectorAll("li[aria-posinset] a")].at(-1);
      last.focus();
      last.click();
      return last.hash;
    });
    await until("the harvest", () => many.evaluate((hash) => location.hash === hash, link));
    await many.press("button", "Back");
    await until("the same place of the garden", () =>
      many.evaluate((hash) => {
        const sheet = document.querySelector(`a[href="${hash}"]`)?.getBoundingClientRect();
        return sheet && sheet.bottom > 0 && sheet.top < innerHeight;
      }, link),
    );
  });

  await t.test("the end of the list says how long it is", async () => {
    await firstLook(few);
    assert.equal(await few.evaluate(lookDownTo, 50), "50");
  });
});

/** Runs before the page: as many lines as asked for in every list of two replies, each a copy of a true one. */
function multiply(count) {
  const many = (lines) => Array.from({ length: count }, (_, at) => {
    const line = lines[at % lines.length];
    const own = (id) => (at < lines.length ? id : `${id}-${at}`);
    return { ...line, ...(line.id && { id: own(line.id) }), ...(line.bottle && { bottle: own(line.bottle) }) };
  });
  const ask = window.fetch;
  window.fetch = async (address, ...rest) => {
    const response = await ask(address, ...rest);
    if (!/\/call\/(due\.list|trace\.forward)$/.test(address)) return response;
    const { reply } = await response.json();
    for (const [name, lines] of Object.entries(reply)) {
      if (Array.isArray(lines) && lines.length > 0) reply[name] = many(lines);
    }
    return new Response(JSON.stringify({ reply }));
  };
}

/** Runs in the page: opens an address, until its lists stand there; the longest task. */
async function openList(address) {
  const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const tasks = [];
  const watching = new PerformanceObserver((list) => tasks.push(...list.getEntries()));
  watching.observe({ type: "longtask" });
  location.hash = address;
  while (!document.querySelector("li[aria-setsize]")) await frame();
  await new Promise((resolve) => setTimeout(resolve, 150));
  watching.disconnect();
  return Math.max(0, ...tasks.map((task) => task.duration));
}

test("browser: what is due and a trace draw only what is near, however much there is", isBrowser(), async (t) => {
  const count = 2_000;
  const app = await startWithSeason(t, { before: [multiply, count] });
  const beds = await app.evaluate(async () => {
    const response = await fetch("/call/bed.list", { method: "POST", headers: { "content-type": "application/json" }, body: "{}" });
    return (await response.json()).reply.beds;
  });
  const bed = beds.find(({ name }) => name === "Long bed").id;

  for (const [address, title] of [["/due", "What is due"], [`/trace/bed/${bed}`, "Trace"]]) {
    const tasks = [];
    // A task that the list itself causes is there in every round; a hiccup of the machine is not.
    for (let round = 0; round < 3 || (round < 12 && Math.min(...tasks) > LONGEST_TASK); round += 1) {
      await open(app, "/more");
      await app.sees("heading", "More");
      tasks.push(await app.evaluate(openList, address));
    }
    const lists = await app.evaluate(() =>
      [...document.querySelectorAll("main section:has(li[aria-setsize])")].map((section) => ({
        heading: section.querySelector("h2").textContent,
        length: Number(section.querySelector("li").getAttribute("aria-setsize")),
        drawn: section.querySelectorAll("li").length,
      })),
    );
    const sum = (of) => lists.reduce((sum, list) => sum + of(list), 0);
    const drawn = sum(({ drawn }) => drawn);
    const all = sum(({ length }) => length);
    t.diagnostic(`${title}: ${drawn} of ${all} lines, longest task ${Math.min(...tasks)} ms`);
    assert.ok(all >= count && drawn < 150, `${title}: ${drawn} of ${all} lines`);
    for (const { heading, length } of lists) {
      assert.ok(heading.endsWith(length.toLocaleString("en-GB")), `${heading} does not say ${length}`);
    }
    assert.ok(Math.min(...tasks) <= LONGEST_TASK, `${title}: longest task ${tasks.join(", ")} ms`);

    // The middle stays where it was on the way back, and the end is there.
    await app.evaluate(() => scrollTo(0, document.documentElement.scrollHeight / 2));
    const inSight = () =>
      app.evaluate(() => {
        const lines = [...document.querySelectorAll("main li[aria-posinset]")];
        const line = lines.find((line) => line.getBoundingClientRect().top >= 0);
        return line && line.getBoundingClientRect().top < innerHeight && line.querySelector("a").hash;
      });
    const middle = await until("lines in the middle", inSight);
    await open(app, "/more");
    await app.sees("heading", "More");
    await app.evaluate(() => history.back());
    await until("the same lines on the way back", async () => (await inSight()) === middle);
    await app.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    await until("the last line", () =>
      app.evaluate(() => {
        const end = [...document.querySelectorAll("main li")].at(-1);
        const isLast = end.getAttribute("aria-posinset") === end.getAttribute("aria-setsize");
        return isLast && end.getBoundingClientRect().top < innerHeight;
      }),
    );
  }
});
