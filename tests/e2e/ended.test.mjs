// A page that dies under its window comes back by itself.

import path from "node:path";

import { engine } from "./engine.mjs";
import { built, freshFolder, ofGroup, rest, start, until } from "./programs.mjs";
import { test } from "./tested.mjs";

const only = { skip: engine === "window" ? false : "a browser has rules of its own for a page that ends" };

test("window: a page whose process is killed is loaded anew", only, async (t) => {
  const own = await freshFolder();
  const app = start(built("trugbook"), ["--journal", path.join(own.folder, "journal")], {
    XDG_DATA_HOME: path.join(own.folder, "data"),
    XDG_CACHE_HOME: path.join(own.folder, "cache"),
  });
  t.after(async () => {
    await app.stop();
    await own.remove();
  });
  const page = () =>
    until("a process of the page", async () =>
      (await ofGroup(app.group)).find(({ program, state }) => program === "WebKitWebProces" && state !== "Z"),
    );
  const first = await page();
  // While its processes still greet each other, the app would end with them.
  await rest(app.group);
  process.kill(first.process, "SIGKILL");
  await until("another page in its place", async () => (await page()).process !== first.process);
});
