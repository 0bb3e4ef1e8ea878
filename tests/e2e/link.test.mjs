// A label's link opens what bears it; so does its code.

import { engine } from "./engine.mjs";
import { freshFolder, tellSeason, until } from "./programs.mjs";
import { test } from "./tested.mjs";

const only = { skip: engine === "window" ? false : "a browser opens no label's link" };

test("window: the link on a label opens its bottle, and one of another book says so", only, async (t) => {
  const { open } = await import("./window.mjs");
  const journal = await freshFolder();
  t.after(() => journal.remove());
  await tellSeason(journal.folder);
  const size = { folder: journal.folder, width: 412, height: 915 };
  const shown = (app, text) => until(`"${text}"`, () => app.evaluate((text) => document.body.innerText.includes(text), text));

  const first = await open(size);
  let bottle;
  try {
    bottle = await first.evaluate(async () => {
      const answer = await window.__TAURI_INTERNALS__.invoke("call", { command: "bottle.list", request: {} });
      return answer.reply.bottles[0];
    });
  } finally {
    await first.close();
  }

  const opened = await open({ ...size, args: [`trugbook:lot/${bottle.code}?name=Any+name`] });
  try {
    await until("the page of the bottle", () => opened.evaluate((id) => location.hash === `#/bottle/${id}`, bottle.id));
    await shown(opened, bottle.code);
    await opened.evaluate(() => void (location.hash = `/lot/${encodeURIComponent("trugbook:lot/vuvu-999?name=Sage")}`));
    await shown(opened, "Nothing in your records has the code vuvu-999.");
  } finally {
    await opened.close();
  }
});
