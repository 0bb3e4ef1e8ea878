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

/** Opens the app on the journal in `folder`; `before` is a function and its argument, for the page's first moment. */
export async function open({ folder, width, height, dark, before }) {
  const preview = start(built("debug", "dev"), ["serve", "--journal", folder]);
  let browser;
  const close = async () => {
    await browser?.close();
    await preview.stop();
  };
  try {
    const address = await preview.firstLine;
    browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: FLAGS });
    return { ...(await inBrowser(browser, address, { width, height, dark, before })), close };
  } catch (error) {
    await close();
    throw error;
  }
}

async function inBrowser(browser, address, { width, height, dark, before }) {
  const context = await browser.newContext({
    viewport: { width, height },
    deviceScaleFactor: 2,
    isMobile: true,
    hasTouch: true,
    colorScheme: dark ? "dark" : "light",
    reducedMotion: "reduce",
    locale: "en-GB",
  });
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
    picture: (path) => page.screenshot({ path }),
    resize: (size) => page.setViewportSize(size),
    key: (name) => page.keyboard.press(name),
    /** Media that this engine alone can pretend, such as forced colours. */
    emulate: (media) => page.emulateMedia(media),
    reload: () => page.reload(),
    /** Whether the page ran without a complaint in its console. */
    isContent: () => assert.deepEqual(complaints, [], "the page complained in its console"),
  };
}
