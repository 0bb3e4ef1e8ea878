// One way to use the app, whichever engine shows it. Things are found by role and name, as a maker finds them.

import { freshFolder, tellSeason, until } from "./programs.mjs";

const engine = process.env.TRUGBOOK_ENGINE ?? "browser";
const { open: openIn } = await import(engine === "window" ? "./window.mjs" : "./browser.mjs");

export { engine };

/**
 * Opens the app for one test and closes it after; `prepare` may fill the journal's folder before, `folder` is one that
 * outlives it. Of a journal that `lacks` its pictures a browser complains, and that is no fault of the page.
 */
export async function withApp(
  test,
  { width = 412, height = 915, dark = false, prepare = async () => {}, before, folder, lacks = false } = {},
) {
  const journal = folder ? { folder, remove: async () => {} } : await freshFolder();
  let app;
  // Asked for at once, so that a test that fails on the way leaves nothing behind either.
  test.after(async () => {
    await app?.close();
    await journal.remove();
    if (!lacks) app?.isContent?.();
  });
  await prepare(journal.folder);
  app = await openIn({ folder: journal.folder, width, height, dark, before });
  const reads = (text) => {
    let shown = "";
    return until(
      () => `"${text}" on the page, which shows: ${shown.slice(0, 2_000)}`,
      async () => {
        try {
          shown = await app.evaluate(whatIsShown);
        } catch (error) {
          // The page was loaded anew while it was read.
          if (!/context was destroyed|unload event/.test(error.message)) throw error;
        }
        return shown.includes(text);
      },
    );
  };
  return { ...app, reads };
}

/** What the page shows; runs in the page. */
function whatIsShown() {
  return document.body.innerText.replaceAll("\u00a0", " ");
}

/** Opens the app on the demo season; a book that holds harvests is not begun again. */
export async function startWithSeason(t, look = {}) {
  const app = await withApp(t, { ...look, prepare: tellSeason });
  await app.sees("link", "Pick");
  return app;
}

/** Goes to an address within the app. */
export async function open(app, address) {
  await app.evaluate((address) => void (location.hash = address), address);
}

/** Opens what is folded away, by a selector. */
export async function unfold(app, folds) {
  await app.evaluate((folds) => document.querySelectorAll(folds).forEach((fold) => (fold.open = true)), folds);
}
