// One way to use the app, whichever engine shows it. Things are found by role and name, as a maker finds them.

import { freshFolder } from "./programs.mjs";

const engine = process.env.TRUGBOOK_ENGINE ?? "browser";
const { open: openIn } = await import(engine === "window" ? "./window.mjs" : "./browser.mjs");

export { engine };

/** Opens the app for one test and closes it after; `prepare` may fill the journal's folder before. */
export async function withApp(test, { width = 412, height = 915, dark = false, prepare = async () => {} } = {}) {
  const journal = await freshFolder();
  await prepare(journal.folder);
  const app = await openIn({ folder: journal.folder, width, height, dark });
  test.after(async () => {
    await app.close();
    await journal.remove();
  });
  return app;
}
