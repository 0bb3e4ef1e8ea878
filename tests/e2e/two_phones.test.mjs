// Two phones used one bottle without knowing of each other. Brought together, the book asks what is true.

import { copyFile, readdir } from "node:fs/promises";
import path from "node:path";

import { asking } from "./asked.mjs";
import { engine, open, withApp } from "./engine.mjs";
import { freshFolder, tellSeason, until } from "./programs.mjs";
import { test } from "./tested.mjs";

/** The app, with the folder of its journal. */
async function phone(t, fill = async () => {}) {
  let folder;
  const app = await withApp(t, {
    prepare: async (made) => {
      folder = made;
      await fill(made);
    },
  });
  return { ...app, folder };
}

/** A full bottle of the season in a folder that no app has open. */
function fullBottle(folder) {
  const { bottles } = asking(folder)("bottle.list", { limit: 200 });
  return bottles.find((bottle) => bottle.state === "on the shelf" && !bottle.bin_it && bottle.left_ml === bottle.size_ml);
}

/** Backs up by the page and takes the file away, as sharing it does. */
async function backUp(app, to) {
  await open(app, "/safe");
  await app.press("button", "Make a backup");
  await app.reads("The backup is made.");
  const made = (await readdir(path.join(app.folder, "made"))).at(-1);
  await copyFile(path.join(app.folder, "made", made), to);
}

/** Runs in the page: scrolls down until these words are shown. */
async function lookDownTo(words) {
  while (!document.body.innerText.includes(words)) {
    scrollBy(0, innerHeight / 2);
    await new Promise((resolve) => requestAnimationFrame(resolve));
  }
}

async function use(app, bottle, millilitres) {
  await open(app, `/use/${bottle}`);
  await app.fill("textbox", "How much", millilitres);
  await app.press("button", "Save");
  await app.reads("Saved.");
}

test(`${engine}: a bottle that two phones used asks what is true, and the answer settles it`, async (t) => {
  const { folder, remove } = await freshFolder();
  t.after(remove);
  const [base, other] = [path.join(folder, "base.zip"), path.join(folder, "other.zip")];
  let bottle;
  const first = await phone(t, async (made) => {
    await tellSeason(made);
    bottle = fullBottle(made);
  });
  await backUp(first, base);

  const second = await phone(t);
  await open(second, "/safe-restore");
  await second.attach("Backup file", base);
  await second.press("button", "Check the file");
  await second.press("checkbox", "Replace my book with this backup");
  await second.press("button", "Restore");
  await second.reads("The backup is restored.");

  const more = Math.ceil(bottle.size_ml * 0.6);
  for (const app of [first, second]) await use(app, bottle.id, String(more));
  await backUp(second, other);

  await open(first, "/safe-merge");
  await first.attach("Backup file of the other device", other);
  await first.press("button", "Check the file");
  await first.press("button", "Combine");
  await first.reads("Combined.");
  await open(first, `/bottle/${bottle.id}`);
  await first.reads("Fix the amount");
  await first.reads(`Your records show ${2 * more} mL taken from it`);
  for (const choice of ["Give away", "Throw away", "Edit"]) await first.sees("link", choice);
  await first.sees("button", "Mark as empty");

  // In the list it stands among what else is due, of which only what is near is drawn.
  await open(first, "/due");
  await first.sees("heading", "To do");
  await first.evaluate(lookDownTo, "Fix one of the amounts.");
  for (const choice of [/^It was given away: /, /^It was thrown away: /, /^Edit it: /]) await first.sees("link", choice);
  await first.press("button", /^It is empty: /);
  await first.reads("Bottle marked as empty.");
  await open(first, `/bottle/${bottle.id}`);
  await first.reads("Empty since");
  await until("nothing more is asked of it", () =>
    first.evaluate(() => !document.body.innerText.includes("Fix one of the amounts.")),
  );
});
