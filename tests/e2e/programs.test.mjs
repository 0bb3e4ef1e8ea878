// What a test starts ends with it, however the test ends; and every test has an end.

import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFile, readdir } from "node:fs/promises";

import { file, start, until } from "./programs.mjs";
import { test } from "./tested.mjs";

/** Starts a program that starts another; the number of that one. */
const CHILD = `sleep 100000 & echo $!; wait`;

async function isGone(process) {
  await until(`process ${process} is gone`, async () => {
    const told = await readFile(`/proc/${process}/stat`, "utf8").catch(() => "gone) Z ");
    return told.includes(") Z ");
  });
}

test("a program that is stopped takes with it what it started", async () => {
  const program = start("sh", ["-c", CHILD]);
  const child = await program.firstLine;
  await program.stop();
  await isGone(child);
});

test("a program whose test is killed ends with all that it started", async () => {
  const script = `
    const { start } = await import(${JSON.stringify(file("tests", "e2e", "programs.mjs"))});
    console.log(await start("sh", ["-c", ${JSON.stringify(CHILD)}]).firstLine);
  `;
  const killed = spawn(process.execPath, ["--input-type=module", "-e", script], { stdio: ["ignore", "pipe", "inherit"] });
  const [child] = await once(killed.stdout, "data");
  killed.kill("SIGKILL");
  await isGone(String(child).trim());
});

test("a program that ends by itself leaves nothing running", async () => {
  const program = start("sh", ["-c", "sleep 100000 & echo $!"]);
  const child = await program.firstLine;
  assert.equal(await program.gone, 0);
  await isGone(child);
});

test("every test of this folder has an end, and its name is said", async () => {
  for (const name of await readdir(import.meta.dirname)) {
    if (!name.endsWith(".test.mjs")) continue;
    const source = await readFile(file("tests", "e2e", name), "utf8");
    assert.ok(!source.includes(`from "node:${"test"}"`), `${name} takes its tests from tested.mjs`);
  }
});
