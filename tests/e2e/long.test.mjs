// Of a list of thousands the page draws what is near, and leads back to the same place. How quick it is, `cargo dev bench` measures.

import assert from "node:assert/strict";

import { engine, open, startWithSeason } from "./engine.mjs";
import { beginAnew, garden, multiply } from "./long.mjs";
import { until } from "./programs.mjs";
import { test } from "./tested.mjs";

const only = { skip: engine === "browser" ? false : "the preview alone takes a table in by a call of the page" };

/** More sheets than lie within a screen of the screen, by the stretch; far fewer than are looked at. */
const NEAR = 100;

/** Runs in the page: scrolls until so many were shown; how long the list says it is then. */
async function lookDownTo(count) {
  for (;;) {
    scrollTo(0, document.documentElement.scrollHeight);
    await new Promise((resolve) => requestAnimationFrame(resolve));
    const last = [...document.querySelectorAll("li[aria-posinset]")].at(-1);
    if (Number(last?.getAttribute("aria-posinset")) >= count) return last.getAttribute("aria-setsize");
  }
}

/** A first look at the garden, with nothing remembered from an earlier one. */
async function firstLook(app) {
  await beginAnew(app);
  await open(app, "/garden");
  await until("a sheet", () => app.evaluate(() => document.querySelector("li[aria-posinset]") !== null));
}

test("browser: of ten thousand harvests only those that are near are drawn", only, async (t) => {
  const app = await garden(t, 10_000);
  await firstLook(app);
  assert.equal(await app.evaluate(lookDownTo, 1_500), "-1", "how many there are is not known on the way");
  let drawn;
  await until(
    () => `at most ${NEAR} sheets are drawn, and one block for each stretch that is far: ${JSON.stringify(drawn)}`,
    async () => {
      drawn = await app.evaluate(() => {
        const sheets = [...document.querySelectorAll("main li[aria-posinset]")];
        const within = sheets.reduce((sum, sheet) => sum + sheet.querySelectorAll("*").length + 1, 0);
        return { sheets: sheets.length, beside: document.querySelectorAll("main *").length - within };
      });
      return drawn.sheets <= NEAR && drawn.beside <= 1_500 / 4;
    },
  );

  // What is left behind keeps its height, so the way back leads to the same place.
  const link = await app.evaluate(() => {
    const last = [...document.querySelectorAll("li[aria-posinset] a")].at(-1);
    last.focus();
    last.click();
    return last.hash;
  });
  await until("the harvest", () => app.evaluate((hash) => location.hash === hash, link));
  await app.press("button", "Back");
  await until("the same place of the garden", () =>
    app.evaluate((hash) => {
      const sheet = document.querySelector(`a[href="${hash}"]`)?.getBoundingClientRect();
      return sheet && sheet.bottom > 0 && sheet.top < innerHeight;
    }, link),
  );
});

test("browser: the end of the list says how long it is", only, async (t) => {
  const app = await garden(t, 50);
  await firstLook(app);
  assert.equal(await app.evaluate(lookDownTo, 50), "50");
});

test("browser: what is due and a trace draw only what is near, however much there is", only, async (t) => {
  const count = 2_000;
  const app = await startWithSeason(t, { before: [multiply, count] });
  const beds = await app.evaluate(async () => {
    const response = await fetch("/call/bed.list", { method: "POST", headers: { "content-type": "application/json" }, body: "{}" });
    return (await response.json()).reply.beds;
  });
  const bed = beds.find(({ name }) => name === "Long bed").id;

  for (const [address, title] of [["/due", "To do"], [`/trace/bed/${bed}`, "Where it went"]]) {
    await open(app, address);
    let lists = [];
    const sum = (of) => lists.reduce((sum, list) => sum + of(list), 0);
    const told = () => `${title}: ${sum(({ drawn }) => drawn)} of ${sum(({ length }) => length)} lines are drawn`;
    await until(told, async () => {
      lists = await app.evaluate(() =>
        [...document.querySelectorAll("main section:has(li[aria-setsize])")].map((section) => ({
          heading: section.querySelector("h2").textContent,
          length: Number(section.querySelector("li").getAttribute("aria-setsize")),
          drawn: section.querySelectorAll("li").length,
        })),
      );
      return sum(({ length }) => length) >= count && sum(({ drawn }) => drawn) < 150;
    });
    t.diagnostic(told());
    for (const { heading, length } of lists) {
      assert.ok(heading.endsWith(new Intl.NumberFormat("en-GB", { useGrouping: "min2" }).format(length)), `${heading} does not say ${length}`);
    }

    // The middle stays where it was on the way back, and the end is there.
    await app.evaluate(() => scrollTo(0, document.documentElement.scrollHeight / 2));
    const inSight = () =>
      app.evaluate(async () => {
        // What comes near is drawn and measured in the frames before.
        for (let frames = 0; frames < 10; frames += 1) await new Promise((resolve) => requestAnimationFrame(resolve));
        const lines = [...document.querySelectorAll("main li[aria-posinset]")];
        const line = lines.find((line) => line.getBoundingClientRect().top >= 0);
        return line && line.getBoundingClientRect().top < innerHeight && line.querySelector("a").hash;
      });
    let middle = null;
    await until("lines that stay in the middle", async () => {
      const before = middle;
      middle = await inSight();
      return middle && middle === before;
    });
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

test("browser: of a season of daily harvests, twenty years deep, three a month are drawn, and no year to come is offered", only, async (t) => {
  const app = await garden(t, 20 * 365);
  await open(app, "/season/2006");
  await until("the ribbon", () => app.evaluate(() => document.querySelectorAll(".stand .sprig").length > 0));
  const drawn = await app.evaluate(() => [...document.querySelectorAll(".stand")].map((month) => month.querySelectorAll(".sprig").length));
  assert.deepEqual(drawn, Array(12).fill(3), "and each month counts the rest");
  assert.ok(await app.evaluate(() => document.body.innerText.includes("365 harvests")));
  assert.ok((await app.evaluate(() => document.querySelectorAll("main *").length)) < 4_000, "what is folded away is small");
  await app.sees("link", "The year after, 2007");
  const year = new Date().getFullYear();
  await open(app, `/season/${year}`);
  await app.sees("link", `The year before, ${year - 1}`);
  assert.equal(await app.evaluate(() => document.querySelectorAll('main nav a[href^="#/season/"]').length), 1);
});
