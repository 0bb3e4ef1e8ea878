// What the page of the window may not do: the policy and the capabilities, tried from inside.

import assert from "node:assert/strict";
import { createServer } from "node:http";

import { engine, withApp } from "./engine.mjs";
import { test } from "./tested.mjs";

const only = { skip: engine === "window" ? false : "a browser has walls of its own" };

test("window: the page may call its own commands and no plugin", only, async (t) => {
  const app = await withApp(t);
  await app.press("button", "Open the book");
  const answers = await app.evaluate(async () => {
    const { invoke } = window.__TAURI_INTERNALS__;
    const asked = {
      "plugin:fs|read_text_file": { path: "/etc/hostname" },
      "plugin:fs|write_text_file": {},
      "plugin:dialog|open": { options: {} },
      "plugin:dialog|save": { options: {} },
      "plugin:deep-link|get_current": {},
      "plugin:deep-link|register": { protocol: "https" },
      "plugin:event|listen": { event: "deep-link://new-url", target: { kind: "Any" }, handler: 0 },
      "plugin:webview|create_webview_window": { options: {} },
    };
    const answers = {};
    for (const [command, request] of Object.entries(asked)) {
      answers[command] = await invoke(command, request).then(() => "answered", String);
    }
    answers.ours = await invoke("call", { command: "setting.show", request: {} }).then(() => "answered", String);
    return answers;
  });
  const { ours, ...plugins } = answers;
  assert.equal(ours, "answered");
  for (const [command, answer] of Object.entries(plugins)) assert.match(answer, /not allowed/, command);
});

test("window: the page runs no script but its own and fetches nothing from elsewhere", only, async (t) => {
  const asked = [];
  const elsewhere = createServer((request, response) => {
    asked.push(request.url);
    response.setHeader("access-control-allow-origin", "*").end("here");
  }).listen(0, "127.0.0.1");
  t.after(() => elsewhere.close());
  await new Promise((resolve) => elsewhere.once("listening", resolve));
  const app = await withApp(t);
  await app.press("button", "Open the book");

  const done = await app.evaluate(async (address) => {
    const tried = (act) => {
      try {
        act();
        return "done";
      } catch {
        return "refused";
      }
    };
    // Not every engine tells the element itself that it was refused; the page is told.
    const added = (tag, what, directive) =>
      new Promise((resolve) => {
        const element = Object.assign(document.createElement(tag), what);
        element.onload = () => resolve("done");
        element.onerror = () => resolve("refused");
        document.addEventListener("securitypolicyviolation", (refusal) => {
          if (refusal.effectiveDirective.startsWith(directive)) resolve("refused");
        });
        document.body.append(element);
      });
    const written = Object.assign(document.createElement("script"), { textContent: "window.ran = true" });
    document.body.append(written);
    return {
      evaluated: tried(() => new Function("return 1")()),
      written: window.ran ? "done" : "refused",
      fetched: await fetch(`${address}/fetch`).then(() => "done", () => "refused"),
      script: await added("script", { src: `${address}/script` }, "script-src"),
      image: await added("img", { src: `${address}/image` }, "img-src"),
      frame: await added("iframe", { src: `${address}/frame` }, "frame-src").then(() => "tried"),
    };
  }, `http://127.0.0.1:${elsewhere.address().port}`);
  assert.deepEqual(done, {
    evaluated: "refused",
    written: "refused",
    fetched: "refused",
    script: "refused",
    image: "refused",
    frame: "tried",
  });
  await fetch(`http://127.0.0.1:${elsewhere.address().port}/without-walls`);
  assert.deepEqual(asked, ["/without-walls"], "nothing else was asked of the other address");
});
