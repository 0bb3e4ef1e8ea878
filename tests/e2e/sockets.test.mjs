// The app tells nobody: while it is used, none of its processes reaches beyond this machine.

import assert from "node:assert/strict";
import { chmod, readFile, writeFile } from "node:fs/promises";
import path from "node:path";

import { engine } from "./engine.mjs";
import { built, file, freshFolder, rest, run, start, until } from "./programs.mjs";
import { test } from "./tested.mjs";

const only = { skip: engine === "window" ? false : "a browser is not the app" };
const calls = ["-f", "--seccomp-bpf", "-qq", "-e", "trace=socket,connect,bind,sendto,sendmsg,sendmmsg", "-s", "0", "-o"];

/** Every line of a trace that asks for the internet, and those of them that name an address beyond this machine. */
function reached(trace) {
  const lines = trace.split("\n");
  const internet = lines.filter((line) => /\bAF_INET6?\b|\bAF_PACKET\b/.test(line));
  const beyond = internet.filter((line) => {
    const address = /inet_addr\("([^"]*)"\)|inet_pton\(AF_INET6, "([^"]*)"/.exec(line);
    return address && !/^(127\.|::1$|::ffff:127\.)/.test(address[1] ?? address[2]);
  });
  return { internet, beyond };
}

test("the trace shows a reach beyond this machine, where there is one", only, async (t) => {
  const own = await freshFolder();
  t.after(() => own.remove());
  const log = path.join(own.folder, "trace");
  // An address that the standards keep for examples (RFC 5737): nobody answers there.
  // It reaches before the next turn of its loop, whether or not there is a way to there.
  const reach = `const s = require("node:net").connect(9, "192.0.2.1"); s.on("error", () => {}); setImmediate(() => process.exit())`;
  await run("strace", [...calls, log, process.execPath, "-e", reach]);
  assert.equal(reached(await readFile(log, "utf8")).beyond.length, 1);
});

test("window: left alone, the app opens no socket of the internet at all", only, async (t) => {
  const own = await freshFolder();
  const log = path.join(own.folder, "trace");
  const app = start("strace", [...calls, log, built("trugbook"), "--journal", path.join(own.folder, "journal")], {
    XDG_DATA_HOME: path.join(own.folder, "data"),
    XDG_CACHE_HOME: path.join(own.folder, "cache"),
  });
  t.after(async () => {
    await app.stop();
    await own.remove();
  });
  const said = () => readFile(log, "utf8").catch(() => "");
  await until("a process of the web view speaks", async () => new Set((await said()).match(/^\d+/gm)).size >= 3);
  await rest(app.group);
  const trace = await said();
  assert.match(trace, /AF_UNIX/, "the trace sees the sockets that the app does open");
  assert.deepEqual(reached(trace).internet, []);
});

test("window: while it is used, the app reaches nothing but the driver on this machine", only, async (t) => {
  const { open } = await import("./window.mjs");
  const own = await freshFolder();
  const log = path.join(own.folder, "trace");
  const traced = path.join(own.folder, "traced");
  await writeFile(traced, `#!/bin/sh\nexec strace ${calls.join(" ")} '${log}' '${built("trugbook")}' "$@"\n`);
  await chmod(traced, 0o755);
  const app = await open({ folder: path.join(own.folder, "journal"), width: 412, height: 915, application: traced });
  t.after(async () => {
    await app.close();
    await own.remove();
  });

  await app.press("button", "Open the book");
  await app.press("link", "Pick");
  await app.fill("searchbox", "Herb", "pepperm");
  await app.press("button", "Peppermint");
  await app.press("radio", "leaf");
  await app.attach("Take a photo", file("tests", "photo", "samples", "place_and_zone.jpg"));
  await app.fill("textbox", "Weight on the scale", "250");
  await app.press("button", "Save harvest");
  await app.sees("button", "Undo");
  for (const address of ["/rack", "/pantry", "/herbs", "/season/2026", "/safe", "/settings"]) {
    await app.evaluate((address) => void (location.hash = address), address);
    await app.sees("heading");
  }

  const { internet, beyond } = reached(await readFile(log, "utf8"));
  assert.ok(internet.length > 0, "the driver itself speaks to the app on this machine, and the trace sees it");
  assert.deepEqual(beyond, []);
});
