// The programs of the project that a test starts, and what they need around them.

import { spawn } from "node:child_process";
import { mkdtemp, readFile, readdir, rm } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";

const here = import.meta.dirname;

/** A file of the repository. */
export const file = (...parts) => path.join(here, "..", "..", ...parts);

/** A program that Cargo built, in the profile of the tests or in the one that ships. */
export const built = (program) =>
  path.join(process.env.TRUGBOOK_BUILT ?? file("target"), process.env.TRUGBOOK_PROFILE ?? "debug", program);

/** A folder of its own, removed by `remove`. */
export async function freshFolder() {
  const folder = await mkdtemp(path.join(tmpdir(), "trugbook-"));
  return { folder, remove: () => rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 }) };
}

/** A port of this machine that nothing listens on. */
export async function freePort() {
  const server = createServer().listen(0, "127.0.0.1");
  await new Promise((resolve) => server.once("listening", resolve));
  const { port } = server.address();
  await new Promise((resolve) => server.close(resolve));
  return port;
}

/** Starts a program in a group of its own, on a leash: it ends with this process, however this one ends. */
function leashed(program, args, env, said) {
  const child = spawn("sh", [file("tests", "leash.sh"), program, ...args], {
    env: { ...process.env, ...env },
    stdio: ["pipe", said, "inherit"],
    detached: true,
  });
  // A program that is gone no longer takes hold of its end.
  child.stdin.on("error", () => {});
  const gone = new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("exit", (code) => {
      end(child);
      resolve(code);
    });
  });
  // Not every caller waits for the end.
  gone.catch(() => {});
  return { child, gone };
}

/** Ends a program with all that it started: a driver that is ended would leave its window open. */
function end(child) {
  try {
    process.kill(-child.pid, "SIGKILL");
  } catch (error) {
    if (error.code !== "ESRCH") throw error;
  }
  child.stdin.destroy();
}

/** Starts a program; `stop` ends it with all that it started, and waits until it is gone. */
export function start(program, args, env = {}) {
  const { child, gone } = leashed(program, args, env, "pipe");
  const firstLine = new Promise((resolve, reject) => {
    let said = "";
    child.stdout.on("data", (bytes) => {
      said += bytes;
      if (said.includes("\n")) resolve(said.split("\n")[0]);
    });
    gone.then(() => reject(new Error(`${program} ended before it said anything`)), reject);
  });
  // Not every caller waits for a line, and one that does gets the rejection itself.
  firstLine.catch(() => {});
  const stop = async () => {
    if (child.exitCode === null && child.signalCode === null) end(child);
    await gone;
    child.stdout.destroy();
  };
  return { firstLine, gone, group: child.pid, stop };
}

/** Runs a program to its end. */
export async function run(program, args) {
  const code = await leashed(program, args, {}, "ignore").gone;
  if (code !== 0) throw new Error(`${program} ${args.join(" ")} ended with ${code}`);
}

/** Fills a folder with the journal of the demo season. */
export const tellSeason = (folder) => run(built("dev"), ["demo", "--into", folder]);

/** How long is waited for a state before it is said that it never came. A busy machine needs its time. */
export const PATIENCE = 180_000;

/** Asks again and again until there is an answer; a wrong page never gets there. */
export async function until(what, ask) {
  const end = Date.now() + PATIENCE;
  for (;;) {
    const answer = await ask();
    if (answer) return answer;
    if (Date.now() > end) {
      throw new Error(`not within ${PATIENCE / 1000} s: ${typeof what === "function" ? what() : what}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** Every process of a group: its number, its name (15 letters of it), its state, and what it has worked (proc(5)). */
export async function ofGroup(group) {
  const found = [];
  for (const name of await readdir("/proc")) {
    if (!/^\d+$/.test(name)) continue;
    const told = await readFile(`/proc/${name}/stat`, "utf8").catch(() => "");
    // After the name, in brackets: the state, the parent, the group, and as the 12th and 13th what it has worked.
    const [, program, fields] = /\((.*)\) (.*)/s.exec(told) ?? [];
    const [state, , of, ...more] = fields?.split(" ") ?? [];
    if (of === String(group)) found.push({ process: Number(name), program, state, worked: `${more[8]} ${more[9]}` });
  }
  return found;
}

/** Waits until none of a group's processes has worked, or could have, at twenty looks after each other. */
export async function rest(group) {
  let before;
  let looks = 0;
  await until("the program has nothing left to do", async () => {
    const work = (await ofGroup(group)).map(({ process, state, worked }) =>
      state === "S" ? `${process} ${worked}` : `${process} ${Math.random()}`,
    );
    const now = work.join();
    looks = now === before ? looks + 1 : 0;
    before = now;
    return looks >= 20;
  });
}
