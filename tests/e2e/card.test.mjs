// A recipe goes out as a card whose code holds it, and comes in again only after the maker says so.

import assert from "node:assert/strict";

import { CODE } from "./asked.mjs";
import { engine, open, startWithSeason } from "./engine.mjs";
import { until } from "./programs.mjs";
import { test } from "./tested.mjs";

const hash = (app) => app.evaluate(() => location.hash);

/** What a command of the core answers to the page, in a browser or in the window. */
const ask = (app, command, request) =>
  app.evaluate(
    async ({ command, request }) => {
      const inside = window.__TAURI_INTERNALS__;
      const headers = { "content-type": "application/json" };
      const sent = { method: "POST", headers, body: JSON.stringify(request) };
      const answer = inside
        ? await inside.invoke("call", { command, request })
        : await (await fetch(`/call/${command}`, sent)).json();
      return answer.reply;
    },
    { command, request },
  );

test(`${engine}: a jar's recipe is shared as a card and taken in from its code`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/pantry");
  await app.press("link", /Calendula tincture/);
  await app.press("button", "More");
  await app.press("link", "Share the recipe");
  const named = () => [...document.querySelectorAll("img, [role=img]")].map((one) => one.getAttribute("aria-label") ?? one.alt ?? "");
  await until("the code, with words for who does not see it", async () =>
    (await app.evaluate(named)).some((name) => name.startsWith("The code that holds the recipe: Calendula tincture")),
  );
  await app.reads("Nothing is sent.");
  const jar = (await hash(app)).split("/").at(-1);
  const { code } = await ask(app, "recipe.card", { jar, size: "a6", note: false });
  assert.match(code.link, /^trugbook:recipe\/1\/[A-Z2-7]+$/);

  await open(app, "/scan");
  await app.fill("textbox", "Code", CODE.slice(0, -4));
  await app.press("button", "Open it");
  await app.reads("Part of this code is missing or wrong.");
  await app.press("link", "Scan a label or card");
  await app.fill("textbox", "Code", code.link);
  await app.press("button", "Open it");
  await app.sees("heading", "Calendula tincture");
  await app.reads("Worked out with your own liquids");
  const before = await ask(app, "recipe.list", {});
  await app.press("button", "Save this recipe");
  await until("the recipe", async () => /^#\/recipe\//.test(await hash(app)));
  await app.reads("Recipe saved.");
  const after = await ask(app, "recipe.list", {});
  assert.equal(after.recipes.length, before.recipes.length + 1, "kept once the maker said so, and not before");

  await open(app, `/take-in/${encodeURIComponent(code.link)}`);
  await app.sees("link", "Open it in your recipes");
});

test(`${engine}: a class of twelve is worked out from a recipe, and a smaller one anew`, async (t) => {
  const app = await startWithSeason(t);
  await open(app, "/recipes");
  await app.press("link", /^Chamomile, half strength/);
  await app.press("button", "More");
  await app.press("link", "Make it with a class");
  await app.reads("468 g German chamomile, flower, dried");
  await app.reads("Pick 1600–3400 g fresh, because 392 g are missing.");
  await app.reads("1205 mL spirit of 96 % vol");
  for (let one = 12; one > 1; one--) await app.press("button", "One person fewer");
  await app.fill("textbox", "Size of each jar", "125");
  await app.reads("19 g German chamomile, flower, dried");
  await app.reads("That is enough.");
  await app.sees("button", "Save cards");
  await app.fill("textbox", "Size of each jar", "1");
  await app.reads("The jars can hold 20 to 5000 mL.");
});
