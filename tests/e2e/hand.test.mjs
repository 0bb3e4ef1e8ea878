// A backup leaves the app through the system's own dialog, byte for byte.

import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { readFile, readdir } from "node:fs/promises";
import path from "node:path";
import { promisify } from "node:util";

import { engine } from "./engine.mjs";
import { freshFolder, until } from "./programs.mjs";
import { test } from "./tested.mjs";

const only = { skip: engine === "window" ? false : "a browser saves as it likes" };
const keys = (...words) => promisify(execFile)("xdotool", words);

test("window: a backup is handed over through the system's dialog", only, async (t) => {
  const { open } = await import("./window.mjs");
  const own = await freshFolder();
  const journal = path.join(own.folder, "journal");
  const app = await open({ folder: journal, width: 412, height: 915 });
  t.after(async () => {
    await app.close();
    await own.remove();
  });
  await app.press("button", "Open the book");
  await app.evaluate(() => void (location.hash = "/safe"));
  await app.press("button", "Make a backup");
  await app.press("button", /^Save trugbook-/i);

  // The dialog belongs to the system, so it is reached by the keyboard and not through the page.
  const title = await until("the dialog", () => keys("search", "--onlyvisible", "--name", "^Save").then(({ stdout }) => stdout.trim(), () => ""));
  await keys("windowfocus", "--sync", title.split("\n")[0]);
  const kept = path.join(own.folder, "kept.zip");
  await keys("key", "ctrl+a");
  await keys("type", kept);
  await keys("key", "Return");
  await until("Saved.", () => app.evaluate(() => document.body.innerText.includes("Saved.")));

  const [name] = await readdir(path.join(journal, "made"));
  const bytes = await readFile(kept);
  assert.equal(bytes.subarray(0, 2).toString(), "PK");
  assert.ok(bytes.equals(await readFile(path.join(journal, "made", name))), "the copy is the file that was made");
  assert.deepEqual((await readdir(own.folder)).sort(), ["journal", "kept.zip"]);
});
