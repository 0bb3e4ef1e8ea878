// The real window of the app, driven over WebDriver.

import { writeFile } from "node:fs/promises";

import { Builder, By, Capabilities } from "selenium-webdriver";

import { built, freePort, freshFolder, start, until } from "./programs.mjs";

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

/** What the driver says of a control when the page drew itself anew, grew, or put its foot over it, and nothing was done
 * with it. A finger would scroll and try again. */
const MOVED = ["StaleElementReferenceError", "ElementClickInterceptedError", "ElementNotInteractableError"];

/** Opens the app on the journal in `folder`; `args` are given to it instead of the journal's own, which it then hears by the environment. */
export async function open({ folder, width, height, dark, application = built("debug", "trugbook"), args = ["--journal", folder] }) {
  const [port, nativePort, own] = [await freePort(), await freePort(), await freshFolder()];
  const driver = start(
    built("tools", "bin", "tauri-driver"),
    ["--port", port, "--native-port", nativePort, "--native-driver", "/usr/bin/WebKitWebDriver"].map(String),
    {
      XDG_DATA_HOME: `${own.folder}/data`,
      XDG_CACHE_HOME: `${own.folder}/cache`,
      GTK_THEME: dark ? "Adwaita:dark" : "Adwaita",
      MESA_SHADER_CACHE_DISABLE: "true",
      TRUGBOOK_JOURNAL: folder,
      LANG: "C.UTF-8",
    },
  );
  const session = await until("the driver answers", () =>
    new Builder()
      .usingServer(`http://127.0.0.1:${port}`)
      .withCapabilities(
        new Capabilities({
          browserName: "wry",
          "tauri:options": { application, args },
        }),
      )
      .build()
      .then(
        (session) => session,
        (error) => (String(error).includes("ECONNREFUSED") ? undefined : Promise.reject(error)),
      ),
  );
  await session.manage().setTimeouts({ script: 60_000 });
  const resize = (size) => session.manage().window().setRect({ x: 0, y: 0, ...size });
  await resize({ width, height });

  const fits = (said, name) => (name instanceof RegExp ? name.test(said) : name === undefined || said === name);
  async function elements(role) {
    try {
      return await session.findElements(By.css(CANDIDATES[role]));
    } catch (error) {
      // The page drew itself anew while the driver counted.
      if (error.name !== "StaleElementReferenceError") throw error;
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
          if (error.name !== "StaleElementReferenceError") throw error;
        }
      }
      return undefined;
    });
  }

  return {
    press: (role, name) =>
      until(`${role} ${name} pressed`, async () => {
        const element = await find(role, name);
        try {
          await element.click();
          return true;
        } catch (error) {
          if (!MOVED.includes(error.name)) throw error;
          await session.executeScript("arguments[0].scrollIntoView({ block: 'center' })", element).catch(() => {});
          return undefined;
        }
      }),
    fill: (role, name, text) =>
      until(`${role} ${name} filled`, async () => {
        const element = await find(role, name);
        try {
          await element.clear();
          // The driver types nothing of no text, and cleared by it alone the field would not tell the page.
          if (text === "") await session.executeScript("arguments[0].dispatchEvent(new Event('input', { bubbles: true }))", element);
          else await element.sendKeys(text);
          return true;
        } catch (error) {
          if (!MOVED.includes(error.name)) throw error;
          await session.executeScript("arguments[0].scrollIntoView({ block: 'center' })", element).catch(() => {});
          return undefined;
        }
      }),
    async choose(role, name, option) {
      // This engine has a role of its own for a list that drops down.
      const element = await until(`${role} ${name}`, async () => {
        for (const each of await elements(role)) {
          if (fits(await each.getAccessibleName(), name)) return each;
        }
        return undefined;
      });
      await session.executeScript("arguments[0].scrollIntoView({ block: 'center' })", element);
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
    async evaluate(ask, about) {
      const answer = await session.executeAsyncScript(
        `const [about, done] = arguments;
         Promise.resolve(about).then(${ask}).then((value) => done({ value }), (error) => done({ error: String(error) }));`,
        about,
      );
      if (answer.error) throw new Error(answer.error);
      return answer.value;
    },
    load: (source) => session.executeScript(source),
    picture: async (path) => writeFile(path, await session.takeScreenshot(), "base64"),
    resize,
    async close() {
      await session.quit();
      await driver.stop();
      await own.remove();
    },
  };
}
