// The pictures of the README, made anew: screens of the demo season on a phone, and one label.

import { mkdir } from "node:fs/promises";

import { open } from "./browser.mjs";
import { idBehind, stillToCome } from "./measures.mjs";
import { file, freshFolder, tellSeason, until } from "./programs.mjs";

const into = file(".github", "pictures");
await mkdir(into, { recursive: true });
const journal = await freshFolder();
await tellSeason(journal.folder);
const app = await open({ folder: journal.folder, width: 360, height: 740 });
const wait = (what) => until(`${what} is there`, async () => (await app.evaluate(stillToCome)).length === 0);
const goTo = async (address) => {
  await app.evaluate((address) => void (location.hash = address), address);
  await wait(address);
};
const behind = async (address, start, ...words) => {
  await goTo(address);
  return until(`a link to ${start} on ${address}`, () => app.evaluate(idBehind, { start, words }));
};
try {
  const jar = await behind("/pantry", "#/jar/", "Calendula tincture");
  const bottle = await behind("/pantry", "#/bottle/", "Chamomile tincture", "open");
  const tray = await behind("/rack", "#/tray/");
  const fresh = await behind("/start-tray", "#/start-tray/");
  const screens = { garden: "/garden", pour: `/fill?lot=harvest:${fresh}`, jar: `/jar/${jar}`, tray: `/tray/${tray}` };
  for (const [name, address] of Object.entries(screens)) {
    await goTo(address);
    if (name === "pour") {
      await app.press("button", /^Tincture of fresh herb in strong spirit/);
      await app.sees("button", "Pour");
    }
    await app.picture(`${into}/${name}.jpg`);
  }
  await goTo(`/labels/bottle/${bottle}`);
  const sheet = await until("the label is drawn", () =>
    app.evaluate(() => {
      const drawn = [...document.images].find((image) => image.src.startsWith("data:image/svg") || image.src.startsWith("blob:"));
      return drawn?.complete ? drawn.src : null;
    }),
  );
  // The label alone, as large as it prints well.
  const clip = await app.evaluate(async (sheet) => {
    const image = new Image();
    image.src = sheet;
    await image.decode();
    image.style.cssText = "position:fixed;inset:0 auto auto 0;width:100vw;z-index:9;background:white";
    document.body.append(image);
    const { width, height } = image.getBoundingClientRect();
    return { x: 0, y: 0, width, height };
  }, sheet);
  await app.picture(`${into}/label.jpg`, { clip });
} finally {
  await app.close();
  await journal.remove();
}
// The browser would go on waiting for the next page.
process.exit();
