// The installed package, opened twice: what was recorded the first time is there the second.

import { withApp } from "./engine.mjs";
import { freshFolder } from "./programs.mjs";
import { test } from "./tested.mjs";

test("the installed package records a harvest and shows it when it is opened again", async (t) => {
  const { folder, remove } = await freshFolder();
  t.after(remove);
  const first = await withApp(t, { folder });
  await first.press("button", "Open the book");
  await first.press("link", "Pick");
  await first.fill("searchbox", "Herb", "pepperm");
  await first.press("button", "Peppermint");
  await first.press("radio", "leaf");
  await first.fill("textbox", "Weight on the scale", "250");
  await first.press("button", "Save harvest");
  await first.reads("Harvest saved.");
  await first.close();

  const second = await withApp(t, { folder });
  await second.reads("Peppermint");
});
