// The real window of the app, driven over WebDriver.

import { writeFile } from "node:fs/promises";

import { Builder, By, Capabilities } from "selenium-webdriver";

import { PATIENCE, built, file, freePort, freshFolder, start, until } from "./programs.mjs";

/** Where an element of a role may be looked for; whether it has that role, the web view says itself. */
const CANDIDATES = {
  alert: "[role=alert]",
  button: "button, summary, [role=button]",
  checkbox: "input[type=checkbox]",
  combobox: "select, input[list], [role=combobox]",
  dialog: "dialog, [role=dialog]",
  heading: "h1, h2, h3, h4",
  link: "a[href]",
  listitem: "li",
  radio: "input[type=radio]",
  searchbox: "input[type=search]",
  slider: "input[type=range]",
  spinbutton: "input[type=number]",
  status: "output, [role=status]",
  textbox: "input, textarea",
};

/**
 * Runs in the page: what keeps a finger from a control; nothing when it is at rest, so that a click on it goes where it
 * is meant to go.
 *
 * At rest means: the page waits for no answer that might redraw it, and in two frames after each other the control
 * stands in the same place, may be used, and lies under nothing else.
 */
async function hindrance(control) {
  if (!window.awaited) {
    const ask = window.fetch;
    window.awaited = new Set();
    window.fetch = (...about) => {
      const answer = ask(...about);
      window.awaited.add(answer);
      const answered = () => void window.awaited.delete(answer);
      answer.then(answered, answered);
      return answer;
    };
  }
  const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const place = () => JSON.stringify(control.getClientRects()[0] ?? null);
  await frame();
  const before = place();
  await frame();
  if (!control.isConnected) return "it is gone";
  if (before === "null" || place() !== before) return "it moves";
  if (window.awaited.size > 0) return "the page waits for an answer";
  if (control.matches(":disabled, [aria-disabled=true]")) return "it is disabled";
  const box = control.getClientRects()[0];
  const middle = (from, to, most) => (Math.max(0, from) + Math.min(most, to)) / 2;
  const over = document.elementFromPoint(
    middle(box.left, box.right, innerWidth),
    middle(box.top, box.bottom, innerHeight),
  );
  if (control.contains(over)) return null;
  control.scrollIntoView({ block: "center", behavior: "instant" });
  return `it lies under ${over?.outerHTML.slice(0, 80) ?? "the edge"}`;
}

/**
 * Runs in the page: draws a dot that no one sees, again and again. Where the processor draws, this engine hands over a
 * picture only once something was drawn anew.
 */
function restless() {
  const dot = document.createElement("i");
  dot.style.cssText = "position:fixed;inset:0 auto auto 0;width:1px;height:1px;opacity:0.01";
  window.restless = document.body.appendChild(dot);
  function draw() {
    dot.style.background = dot.style.background === "black" ? "white" : "black";
    if (dot.isConnected) requestAnimationFrame(draw);
  }
  draw();
}

/** A root of its own that the app was installed in, where it is tried as a package. */
const within = process.env.TRUGBOOK_ROOT;
const program = within ? "/usr/bin/trugbook" : built("trugbook");
const driven = within ? ["sh", file("tests", "within.sh"), within, "WebKitWebDriver"] : ["WebKitWebDriver"];

/**
 * Whether what was asked about is there no more, since the page drew itself or was loaded anew; of one that goes while
 * its role is worked out the driver says nothing at all.
 */
const isGone = ({ name, message }) =>
  ["StaleElementReferenceError", "NoSuchFrameError"].includes(name) || (name === "WebDriverError" && !message.trim());

/** A screen that no one sees, of this file's tests alone: only there is a window of theirs the one that has the keys. */
const screen = start("Xvfb", ["-displayfd", "1", "-screen", "0", "1280x1600x24", "-nolisten", "tcp", "-noreset"]);
process.env.DISPLAY = `:${await screen.firstLine}`;

/** Opens the app on the journal in `folder`; `args` are given to it instead of the journal's own, which it then hears by the environment. */
export async function open({ folder, width, height, dark, application = program, args = ["--journal", folder] }) {
  const [port, own] = [await freePort(), await freshFolder()];
  const driver = start(driven[0], [...driven.slice(1), `--port=${port}`], {
    XDG_DATA_HOME: `${own.folder}/data`,
    XDG_CACHE_HOME: `${own.folder}/cache`,
    GTK_THEME: dark ? "Adwaita:dark" : "Adwaita",
    MESA_SHADER_CACHE_DISABLE: "true",
    // Without this the web view lets nobody drive it.
    TAURI_WEBVIEW_AUTOMATION: "true",
    TRUGBOOK_JOURNAL: folder,
    LANG: "C.UTF-8",
  });
  /** The window is of the driver's group, and ends with it. */
  async function close() {
    await driver.stop();
    await own.remove();
  }
  try {
    const server = `http://127.0.0.1:${port}`;
    const answers = until("the driver answers", () => fetch(`${server}/status`).then(({ ok }) => ok, () => false));
    await Promise.race([answers, driver.gone.then((code) => Promise.reject(new Error(`the driver ended with ${code}`)))]);
    const browser = { browserName: "wry", "webkitgtk:browserOptions": { binary: application, args } };
    const session = await new Builder().usingServer(server).withCapabilities(new Capabilities(browser)).build();
    return { ...(await inWindow(session, { width, height })), close };
  } catch (error) {
    await close();
    throw error;
  }
}

async function inWindow(session, size) {
  await session.manage().setTimeouts({ script: PATIENCE });
  const resize = (size) => session.manage().window().setRect({ x: 0, y: 0, ...size });
  await resize(size);

  const fits = (said, name) => (name instanceof RegExp ? name.test(said) : name === undefined || said === name);
  async function elements(role) {
    try {
      return await session.findElements(By.css(CANDIDATES[role]));
    } catch (error) {
      // The page drew itself anew while the driver counted.
      if (!isGone(error)) throw error;
      return [];
    }
  }
  async function find(role, name) {
    return until(`${role} ${name}`, async () => {
      for (const element of await elements(role)) {
        try {
          if ((await element.getAriaRole()) !== role) continue;
          // Between a number and its unit stands a space that does not break.
          if (!fits((await element.getAccessibleName()).replaceAll("\u00a0", " "), name)) continue;
          // A control may lie unseen over its drawing, so what counts is its box and not its ink.
          if (await session.executeScript("return arguments[0].checkVisibility({ visibilityProperty: true })", element)) {
            return element;
          }
        } catch (error) {
          // The page drew itself anew between two questions.
          if (!isGone(error)) throw error;
        }
      }
      return undefined;
    });
  }

  async function asked(ask, about) {
    const answer = await session.executeAsyncScript(
      `const [about, done] = arguments;
       Promise.resolve(about).then(${ask}).then((value) => done({ value }), (error) => done({ error: String(error) }));`,
      about,
    );
    if (answer.error) throw new Error(answer.error);
    return answer.value;
  }

  /** The element that `ask` finds, once it is at rest. */
  async function atRest(what, ask) {
    let hinders = "it is not there";
    return until(
      () => `${what}: ${hinders}`,
      async () => {
        try {
          const element = await ask();
          if (!element) return undefined;
          hinders = await asked(hindrance, element);
          return hinders === null ? element : undefined;
        } catch (error) {
          // The page drew itself anew between two questions.
          if (!isGone(error)) throw error;
          return undefined;
        }
      },
    );
  }

  return {
    async press(role, name) {
      const element = await atRest(`${role} ${name}`, () => find(role, name));
      await element.click();
    },
    async fill(role, name, text) {
      const element = await atRest(`${role} ${name}`, () => find(role, name));
      await element.clear();
      // The driver types nothing of no text, and cleared by it alone the field would not tell the page.
      if (text === "") await session.executeScript("arguments[0].dispatchEvent(new Event('input', { bubbles: true }))", element);
      else await element.sendKeys(text);
    },
    async choose(role, name, option) {
      // This engine has a role of its own for a list that drops down.
      const element = await atRest(`${role} ${name}`, async () => {
        for (const each of await elements(role)) {
          if (fits(await each.getAccessibleName(), name)) return each;
        }
        return null;
      });
      for (const each of await element.findElements(By.css("option"))) {
        if ((await each.getText()) === option) return each.click();
      }
      throw new Error(`${name} offers no ${option}`);
    },
    async attach(name, path) {
      const element = await until(`a field of files ${name}`, async () => {
        for (const each of await session.findElements(By.css("input[type=file]"))) {
          // This engine adds the words of the control's own button to the name.
          if ((await each.getAccessibleName()).startsWith(name)) return each;
        }
        return undefined;
      });
      await element.sendKeys(path);
    },
    sees: find,
    value: async (role, name) => (await find(role, name)).getProperty("value"),
    idOf: async (role, name) => (await find(role, name)).getAttribute("id"),
    evaluate: asked,
    load: (source) => session.executeScript(source),
    async picture(path) {
      await session.executeScript(restless);
      await writeFile(path, await session.takeScreenshot(), "base64");
      await session.executeScript("window.restless.remove()");
    },
    resize,
  };
}
