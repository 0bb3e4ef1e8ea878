// The preview in Chromium with a finger instead of a mouse.

import assert from "node:assert/strict";

import { chromium } from "playwright-core";

import { PATIENCE, built, start } from "./programs.mjs";

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** One browser for all tests of a file, until its process ends: each has a profile of its own in it. */
let browser;

/** Dots a pixel of CSS: as on a phone where what is drawn is looked at or timed; a test asks what stands where. */
const SCALE = process.env.NODE_TEST_CONTEXT ? 1 : 2;

/** Opens the app on the journal in `folder`; `before` is a function and its argument, for the page's first moment. */
export async function open({ folder, width, height, dark, before }) {
  const preview = start(built("dev"), ["serve", "--journal", folder]);
  let context;
  const close = async () => {
    await context?.close();
    await preview.stop();
  };
  try {
    const address = await preview.firstLine;
    browser ??= chromium.launch({ executablePath: "/usr/bin/chromium-headless-shell", args: FLAGS });
    context = await (await browser).newContext({
      viewport: { width, height },
      deviceScaleFactor: SCALE,
      isMobile: true,
      hasTouch: true,
      colorScheme: dark ? "dark" : "light",
      reducedMotion: "reduce",
      locale: "en-GB",
    });
    return { ...(await inBrowser(context, address, { before })), close };
  } catch (error) {
    await close();
    throw error;
  }
}

async function inBrowser(context, address, { before }) {
  if (before) await context.addInitScript(...before);
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  const complaints = [];
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  await page.goto(address);

  const by = (role, name) => page.getByRole(role, { name, exact: true });
  return {
    press: (role, name) => by(role, name).tap(),
    fill: (role, name, text) => by(role, name).fill(text),
    choose: (role, name, option) => by(role, name).selectOption({ label: option }),
    attach: (name, path) => page.getByLabel(name, { exact: true }).setInputFiles(path),
    sees: (role, name) => by(role, name).first().waitFor(),
    value: (role, name) => by(role, name).inputValue(),
    idOf: (role, name) => by(role, name).getAttribute("id"),
    evaluate: (ask, about) => page.evaluate(ask, about),
    load: (source) => page.evaluate(source),
    picture: (path, more) => page.screenshot({ path, ...more }),
    resize: (size) => page.setViewportSize(size),
    key: (name) => page.keyboard.press(name),
    /** Media that this engine alone can pretend, such as forced colours. */
    emulate: (media) => page.emulateMedia(media),
    reload: () => page.reload(),
    /** Whether the page ran without a complaint in its console. */
    isContent: () => assert.deepEqual(complaints, [], "the page complained in its console"),
  };
}
