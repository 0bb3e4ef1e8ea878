// Keeping the book safe, as a maker does it: a backup and back, a second phone, tables out and in, a damaged book.

import assert from "node:assert/strict";
import { copyFile, cp, open, readFile, readdir, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";

import { engine, withApp } from "./engine.mjs";
import { freshFolder, tellSeason, until } from "./programs.mjs";
import { test } from "./tested.mjs";

/** The app on a journal whose folder is told; `fill` makes what is in it. */
async function withFolder(t, fill = async () => {}) {
  let folder;
  const prepare = async (made) => {
    folder = made;
    await fill(made);
  };
  const app = await withApp(t, { prepare });
  const go = (address) => app.evaluate((address) => void (location.hash = address), address);
  return { ...app, folder, go };
}

/** Where what the test brings and takes away lies. */
async function outside(t) {
  const { folder, remove } = await freshFolder();
  t.after(remove);
  return folder;
}

async function pick(app, grams) {
  await app.go("/pick");
  await app.fill("searchbox", "Herb", "pepperm");
  await app.press("button", "Peppermint");
  await app.press("radio", "leaf");
  await app.fill("textbox", "Weight on the scale", grams);
  await app.press("button", "Save harvest");
  // The page says so and then goes there by itself.
  await until("the harvest", () => app.evaluate(() => location.hash.startsWith("#/harvest/")));
}

/** Backs up by the page and takes the file away, as sharing it does. */
async function backUp(app, to) {
  await app.go("/safe");
  await app.press("button", "Make a backup");
  await app.reads("The backup is made.");
  const [made] = await readdir(path.join(app.folder, "made"));
  await copyFile(path.join(app.folder, "made", made), to);
}

test(`${engine}: a backup is made and restored, and the restoring is taken back`, async (t) => {
  const file = path.join(await outside(t), "backup.zip");
  const app = await withFolder(t, tellSeason);
  await backUp(app, file);
  await pick(app, "251");

  await app.go("/safe-restore");
  await app.press("button", "Check the file");
  await app.reads("Choose a file first.");
  await app.attach("Backup file", file);
  await app.press("button", "Check the file");
  await app.reads("Changes you would lose: 1.");
  await app.press("button", "Restore");
  await app.reads("Confirm that the backup will replace your book.");
  await app.press("checkbox", "Replace my book with this backup");
  await app.press("button", "Restore");
  await app.reads("The backup is restored.");
  await app.press("button", "Undo");
  await app.reads("Undone. Tap again to redo.");
  await app.go("/garden");
  await app.reads("251 g");
  // A backup leaves the offer to undo where it was.
  await app.go("/safe");
  await app.reads("Restored or combined");
  await app.press("button", "Make a backup");
  await app.reads("The backup is made.");
  await app.sees("button", "Undo");
});

test(`${engine}: what a second phone wrote comes in and is told`, async (t) => {
  const file = path.join(await outside(t), "other.zip");
  const other = await withFolder(t);
  await other.press("button", "Open the book");
  await pick(other, "137");
  await backUp(other, file);

  const app = await withFolder(t, tellSeason);
  await app.go("/safe-merge");
  await app.attach("Backup file of the other device", file);
  await app.press("button", "Check the file");
  await app.reads("What will be added");
  await app.reads("1 new, 0 changed, 0 deleted");
  await app.press("button", "Combine");
  await app.reads("Combined.");
  await app.sees("button", "Undo");
  await app.go("/garden");
  await app.reads("137 g");
});

test(`${engine}: tables go out, and come in once every line is right`, async (t) => {
  const folder = await outside(t);
  const app = await withFolder(t);
  await app.press("button", "Open the book");
  const [wrong, right] = [path.join(folder, "wrong.csv"), path.join(folder, "right.csv")];
  const head = "picked_at,herb,part,gross_g,bed\n2019-07-14,Peppermint,leaf,412,Lower bank\n";
  await writeFile(wrong, `${head}2019-07-15,Peppermint,leaf,heavy,Lower bank\n`);
  await writeFile(right, `${head}2019-07-15,Peppermint,leaf,398,Lower bank\n`);
  await app.go("/safe-import");
  await app.attach("Table (CSV)", wrong);
  await app.press("button", "Check the table");
  await app.reads("Lines to fix: 1");
  await app.reads("Line 3, gross_g");
  await app.attach("Table (CSV)", right);
  await app.press("button", "Check the table");
  await app.reads("New beds");
  await app.press("button", "Import them");
  await app.reads("Harvests imported: 2.");
  await app.reads("398 g");

  await app.go("/safe-export");
  await app.press("button", "Export");
  await app.reads("The export is made.");
  const [made] = await readdir(path.join(app.folder, "made"));
  assert.match(made, /^trugbook-.*\.zip$/);
  assert.ok((await stat(path.join(app.folder, "made", made))).size > 1000);
});

test(`${engine}: a page that is loaded anew goes on watching the backup`, async (t) => {
  const app = await withFolder(t, tellSeason);
  await app.go("/safe");
  await app.reads("Seal it with a passphrase");
  // A password has no role that it could be found by.
  for (const field of ["field-passphrase", "field-passphrase_again"]) {
    await app.evaluate((id) => {
      document.getElementById(id).value = "nettle and balm";
      document.getElementById(id).dispatchEvent(new Event("input", { bubbles: true }));
    }, field);
  }
  await app.press("button", "Make a backup");
  // Sealing takes its time, so that the backup is still at work when the page is there again.
  await app.reads("Making the backup");
  await app.evaluate(() => void location.reload());
  await app.reads("The backup is made.");
  await app.reads(".zip.age");
});

/** Overwrites a page of the database, as a failing memory card does. */
async function damage(folder, page) {
  const file = await open(path.join(folder, "journal.trugbook"), "r+");
  const { size } = await file.stat();
  const at = page ?? Math.floor(size / 4096 / 2);
  await file.write(Buffer.alloc(4096, 0xa5), 0, 4096, at * 4096);
  await file.close();
}

test(`${engine}: a damaged book is rescued when it is opened, and says so`, async (t) => {
  const app = await withFolder(t, async (folder) => {
    await tellSeason(folder);
    await damage(folder, 0);
  });
  await app.go("/safe");
  await app.reads("Your book was damaged and is now rescued");
  await app.reads("of its entries could be read");
  await app.reads("damaged-1.trugbook");
  await app.go("/pantry");
  await app.reads("Calendula");
});

test(`${engine}: damage that shows later is rescued by a button`, async (t) => {
  const app = await withFolder(t, async (folder) => {
    await tellSeason(folder);
    await damage(folder);
  });
  await app.go("/safe-rescue");
  await app.press("button", "Save what can be read");
  await app.reads("Your book was damaged and is now rescued");
  await app.reads("Your photos are not touched");
  await app.go("/pantry");
  await app.reads("Calendula");
});

/** Changes one bit in the middle of the first picture in an album. */
async function damagePicture(folder) {
  const originals = path.join(folder, "photos", "originals");
  const [part] = (await readdir(originals)).sort();
  const [name] = await readdir(path.join(originals, part));
  const file = await open(path.join(originals, part, name), "r+");
  const middle = Math.floor((await file.stat()).size / 2);
  const byte = Buffer.alloc(1);
  await file.read(byte, 0, 1, middle);
  byte[0] ^= 1;
  await file.write(byte, 0, 1, middle);
  await file.close();
}

test(`${engine}: the book is checked by a button, and says what is damaged`, async (t) => {
  const app = await withFolder(t, tellSeason);
  await app.go("/safe");
  await app.reads("Not checked yet");
  await app.go("/safe-check");
  await app.press("button", "Check your records");
  await app.reads("Everything is as you entered it.");
  await damagePicture(app.folder);
  await app.press("button", "Check again");
  await app.reads("One thing is wrong.");
  await app.reads("This photo is damaged.");
  await app.go("/safe");
  await app.reads("The last check found something wrong.");
});

test(`${engine}: a book whose file is missing or empty is asked about, and a restore point brings it back`, async (t) => {
  const file = path.join(await outside(t), "backup.zip");
  const other = await withFolder(t, tellSeason);
  await backUp(other, file);
  await pick(other, "251");
  // The restore point holds the harvest that the backup does not.
  await other.go("/safe-restore");
  await other.attach("Backup file", file);
  await other.press("button", "Check the file");
  await other.press("checkbox", "Replace my book with this backup");
  await other.press("button", "Restore");
  await other.reads("The backup is restored.");

  for (const harm of ["missing", "empty"]) {
    const app = await withFolder(t, async (folder) => {
      await cp(other.folder, folder, { recursive: true });
      const journal = path.join(folder, "journal.trugbook");
      for (const name of [journal, `${journal}-wal`, `${journal}-shm`]) await rm(name, { force: true });
      if (harm === "empty") await writeFile(journal, "");
    });
    await app.sees("heading", "Your book is missing");
    await app.reads(harm === "empty" ? "but it is empty" : "is missing from its folder");
    await app.reads("Trugbook deleted nothing and started nothing new.");
    // Every other screen says it, too, and leads here.
    await app.go("/pantry");
    await app.reads("Your book is missing.");
    await app.go("/safe-lost");
    await app.press("button", "Start a new, empty book");
    await app.reads("Confirm that you want to start with an empty book.");
    await app.press("button", /^Go back to/);
    await app.reads("251 g");
  }
});

test(`${engine}: a missing book is begun anew only when the maker confirms it`, async (t) => {
  const app = await withFolder(t, async (folder) => {
    await tellSeason(folder);
    for (const end of ["", "-wal", "-shm"]) await rm(path.join(folder, `journal.trugbook${end}`), { force: true });
  });
  await app.sees("heading", "Your book is missing");
  await app.press("checkbox", "Start with an empty book");
  await app.press("button", "Start a new, empty book");
  await app.press("button", "Open the book");
  await pick(app, "61");
  await app.go("/garden");
  await app.reads("61 g");
});

test(`${engine}: a backup that was changed after it was made is not trusted, and the book stays as it is`, async (t) => {
  const folder = await outside(t);
  const [file, changed, cut] = ["backup.zip", "changed.zip", "cut.zip"].map((name) => path.join(folder, name));
  const app = await withFolder(t, tellSeason);
  await backUp(app, file);
  const bytes = await readFile(file);
  const journal = bytes.indexOf("SQLite format 3");
  bytes[journal + 9000] ^= 8;
  await writeFile(changed, bytes);
  await writeFile(cut, bytes.subarray(0, journal + 50_000));
  for (const untrusted of [changed, cut]) {
    await app.go("/safe-restore");
    await app.attach("Backup file", untrusted);
    await app.press("button", "Check the file");
    await app.reads("Damaged in the backup");
    await app.reads("journal.trugbook");
    await app.reads("This backup can't be restored. Your book stays as it is.");
    await app.go("/garden");
  }
  await app.go("/pantry");
  await app.reads("Calendula");
});

test(`${engine}: a backup of a damaged book says that it is one, and does not count`, async (t) => {
  const app = await withFolder(t, async (folder) => {
    await tellSeason(folder);
    await damage(folder);
  });
  await app.go("/safe");
  await app.press("button", "Make a backup");
  await app.reads("Your book is damaged. This file holds what could be read.");
  await app.reads("of its entries could be read");
  const made = await readdir(path.join(app.folder, "made"));
  assert.deepEqual(made.length, 1);
  assert.match(made[0], /^trugbook-.*-damaged\.zip$/);
  await app.reads("No backup made on this device yet");
});
