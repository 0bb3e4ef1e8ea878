// A language of one's own choice: kept on the device, in the words of the page and of the core.

import { engine, withApp } from "./engine.mjs";
import { test } from "./tested.mjs";

test(`${engine}: German is chosen in the settings, said by page and core, and kept`, async (t) => {
  const app = await withApp(t, { width: 360, height: 740 });
  await app.press("button", "I have read this");
  await app.press("link", "More");
  await app.press("link", /^Settings/);
  await app.press("radio", "Deutsch");
  await app.sees("heading", "Einstellungen");
  await app.press("button", "Zurück");
  await app.press("link", /^Pflanzen/);
  await app.sees("link", /^Melisse/);
  await app.press("link", /^Melisse/);
  await app.sees("heading", "Melisse");
  await app.reads("ätherisches Öl, Rosmarinsäure, Flavonoide");
  await app.evaluate(() => location.reload()).catch(() => {});
  await app.sees("heading", "Melisse");

  await app.evaluate(() => (location.hash = "#/settings"));
  await app.press("radio", "English");
  await app.sees("heading", "Settings");
});
