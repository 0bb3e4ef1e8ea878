// Gardens and lists as long as none was yet, and how they are first looked at.

import { withApp } from "./engine.mjs";
import { until } from "./programs.mjs";

const herbs = [
  ["calendula", "flower"],
  ["peppermint", "leaf"],
  ["sage", "leaf"],
  ["lavender", "flower"],
];

/** Picks of as many days, newest last, as a table that the app takes in as one deed. */
function table(count) {
  const lines = Array.from({ length: count }, (_, at) => {
    const day = new Date(Date.UTC(1996, 0, 1 + at)).toISOString().slice(0, 10);
    const [herb, part] = herbs[at % herbs.length];
    return `${day},${herb},${part},${100 + (at % 400)}`;
  });
  return ["picked_at,herb,part,gross_g", ...lines].join("\n");
}

/** Runs in the page: takes a table in, and says that the cautions were read. */
async function takeIn(text) {
  const call = async (command, request) => {
    const headers = { "content-type": "application/json" };
    const answer = await fetch(`/call/${command}`, { method: "POST", headers, body: JSON.stringify(request) });
    const { reply, failure } = await answer.json();
    if (failure) throw new Error(`${command}: ${failure.message}`);
    return reply;
  };
  const { file } = await call("file.chunk", { upload: "picks", base64: btoa(text), first: true });
  await call("import.apply", { file });
  await call("setting.change", { cautions_seen: true });
}

/** Runs before the page: as many lines as asked for in every list of two replies, each a copy of a true one. */
export function multiply(count) {
  const many = (lines) => Array.from({ length: count }, (_, at) => {
    const line = lines[at % lines.length];
    const own = (id) => (at < lines.length ? id : `${id}-${at}`);
    return { ...line, ...(line.id && { id: own(line.id) }), ...(line.bottle && { bottle: own(line.bottle) }) };
  });
  const ask = window.fetch;
  window.fetch = async (address, ...rest) => {
    const response = await ask(address, ...rest);
    if (!/\/call\/(due\.list|trace\.forward)$/.test(address)) return response;
    const { reply } = await response.json();
    for (const [name, lines] of Object.entries(reply)) {
      if (Array.isArray(lines) && lines.length > 0) reply[name] = many(lines);
    }
    return new Response(JSON.stringify({ reply }));
  };
}

/** The app on a garden of so many harvests. */
export async function garden(t, count) {
  const app = await withApp(t);
  await app.evaluate(takeIn, table(count));
  return app;
}

/** Opens the page anew, on More: nothing of the garden is remembered. */
export async function beginAnew(app) {
  await app.evaluate(() => void (location.hash = "/more"));
  await app.reload();
  await until("More", () => app.evaluate(() => document.querySelector("nav a[aria-current][href='#/more']") !== null));
}
