// The programs of the project that a test starts, and what they need around them.

import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";

const here = import.meta.dirname;

/** A file of the repository. */
export const file = (...parts) => path.join(here, "..", "..", ...parts);

/** A program that Cargo built. */
export const built = (...parts) => path.join(process.env.TRUGBOOK_BUILT ?? file("target"), ...parts);

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

/** Starts a program; `stop` ends it with all that it started, and waits until it is gone. */
export function start(program, args, env = {}) {
  const child = spawn(program, args, { env: { ...process.env, ...env }, stdio: ["ignore", "pipe", "inherit"], detached: true });
  const gone = new Promise((resolve) => {
    child.once("exit", resolve);
    child.once("error", resolve);
  });
  const firstLine = new Promise((resolve, reject) => {
    let said = "";
    child.stdout.on("data", (bytes) => {
      said += bytes;
      if (said.includes("\n")) resolve(said.split("\n")[0]);
    });
    child.once("error", reject);
    gone.then(() => reject(new Error(`${program} ended before it said anything`)));
  });
  // Not every caller waits for a line, and one that does gets the rejection itself.
  firstLine.catch(() => {});
  const stop = async () => {
    // A driver that is ended may leave the window open, and the window would hold our pipe open for good.
    if (child.exitCode === null && child.signalCode === null) process.kill(-child.pid, "SIGKILL");
    await gone;
    child.stdout.destroy();
  };
  return { firstLine, stop };
}

/** Runs a program to its end. */
export async function run(program, args) {
  const child = spawn(program, args, { stdio: ["ignore", "ignore", "inherit"] });
  const code = await new Promise((resolve, reject) => {
    child.once("exit", resolve);
    child.once("error", reject);
  });
  if (code !== 0) throw new Error(`${program} ${args.join(" ")} ended with ${code}`);
}

/** Fills a folder with the journal of the demo season. */
export const tellSeason = (folder) => run(built("debug", "dev"), ["demo", "--into", folder]);

/** Asks again and again until there is an answer; a page needs its time, a wrong page never gets there. */
export async function until(what, ask, patience = 10_000) {
  const end = Date.now() + patience;
  for (;;) {
    const answer = await ask();
    if (answer) return answer;
    if (Date.now() > end) {
      throw new Error(`not within ${patience / 1000} s: ${typeof what === "function" ? what() : what}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
