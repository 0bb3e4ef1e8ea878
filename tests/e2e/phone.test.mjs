// What a phone alone can do, in the page as a phone would show it: a stand-in answers in the place of the shell.

import assert from "node:assert/strict";

import { engine, startWithSeason } from "./engine.mjs";
import { geometry } from "./measures.mjs";
import { until } from "./programs.mjs";
import { test } from "./tested.mjs";

const only = { skip: engine === "browser" ? false : "the window's shell is no phone's" };

/** Runs before the page's first script; what the page asks of the phone is told in `window.phone`. */
function standIn({ allows }) {
  const phone = { plans: [], asked: [], scanning: null, link: sessionStorage.getItem("link") };
  window.phone = phone;
  window.trugbook = { platform: "android", pictures: "/photo", ahead: { language: null, answers: {} } };
  const answers = {
    call: ({ command, request }) =>
      fetch(`/call/${command}`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(request),
      }).then((response) => response.json()),
    opened_link: () => {
      const { link } = phone;
      phone.link = null;
      return link;
    },
    may_remind: ({ ask }) => (phone.asked.push(ask), allows),
    remind: ({ reminders }) => void phone.plans.push(reminders),
    "plugin:barcode-scanner|request_permissions": () => ({ camera: allows ? "granted" : "denied" }),
    "plugin:barcode-scanner|scan": () => new Promise((seen) => (phone.scanning = (content) => seen({ content }))),
    "plugin:barcode-scanner|cancel": () => void (phone.scanning = null),
  };
  window.__TAURI_INTERNALS__ = { invoke: async (command, request) => answers[command](request ?? {}) };
}

async function onAPhone(t, allows = true) {
  return startWithSeason(t, { width: 360, height: 740, before: [standIn, { allows }] });
}

const hash = (app) => app.evaluate(() => location.hash);
const goTo = (app, address) => app.evaluate((address) => void (location.hash = address), address);

/** A bottle on the shelf. */
const someBottle = (app) =>
  app.evaluate(async () => {
    const answer = await window.__TAURI_INTERNALS__.invoke("call", { command: "bottle.list", request: {} });
    return answer.reply.bottles[0];
  });

test("phone: one tap in the pantry scans a label and opens its bottle", only, async (t) => {
  const app = await onAPhone(t);
  const bottle = await someBottle(app);
  await goTo(app, "/pantry");
  await app.press("link", "Scan a label or card");
  await until("the camera looks", () => app.evaluate(() => window.phone.scanning !== null));
  const clear = await app.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  assert.equal(clear, "rgba(0, 0, 0, 0)", "the camera shines through the page");
  assert.deepEqual(await app.evaluate(geometry), []);
  await app.evaluate((code) => window.phone.scanning(`trugbook:lot/${code}?name=Sage`), bottle.code);
  await until("its page", async () => (await hash(app)) === `#/bottle/${bottle.id}`);
  const paper = await app.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  assert.notEqual(paper, clear, "the page is paper again");
  await app.press("button", "Back");
  await until("back where it was scanned from", async () => (await hash(app)) === "#/pantry");
});

test("phone: going back ends the camera, and a code can be typed where it may not be used", only, async (t) => {
  const app = await onAPhone(t);
  await goTo(app, "/pantry");
  await app.press("link", "Scan a label or card");
  await until("the camera looks", () => app.evaluate(() => window.phone.scanning !== null));
  await app.press("button", "Back");
  await until("the camera ends", () => app.evaluate(() => window.phone.scanning === null));

  const without = await onAPhone(t, false);
  const bottle = await someBottle(without);
  await goTo(without, "/scan");
  await without.reads("The camera can't be used here.");
  await without.press("button", "Open it");
  await without.sees("alert");
  await without.fill("textbox", "Code", bottle.code);
  await without.press("button", "Open it");
  await until("its page", async () => (await hash(without)) === `#/bottle/${bottle.id}`);
});

test("phone: reminders are off until they are turned on, and follow what is written", only, async (t) => {
  const app = await onAPhone(t);
  const plans = () => app.evaluate(() => window.phone.plans);
  await goTo(app, "/settings");
  await app.sees("heading", "Reminders");
  assert.deepEqual(await app.evaluate(() => [window.phone.plans, window.phone.asked]), [[], []], "nothing unasked");

  await app.press("checkbox", "Remind me each morning of what to do");
  const [plan] = await until("a plan", async () => ((await plans()).length > 0 ? plans() : null));
  assert.deepEqual(await app.evaluate(() => window.phone.asked.slice(0, 1)), [true], "the phone asks its owner once");
  assert.ok(plan.length > 0 && plan.length <= 30);
  const times = plan.map(({ at }) => new Date(at));
  assert.ok(times.every((at) => at > new Date() && at.getHours() === 8 && at.getMinutes() === 0));
  assert.ok(times.every((at, index) => index === 0 || at > times[index - 1]), "one a morning, in order");
  assert.deepEqual(plan.map(({ id }) => id), plan.map((_, index) => index + 1));
  const oil = "Throw away: Thyme in oil, for the kitchen (";
  assert.ok(plan.every(({ body }) => body.startsWith(oil)), "what can hurt somebody comes every morning, and first");

  await goTo(app, "/due");
  await app.press("link", /^Throw away since .* Thyme in oil, for the kitchen \(/);
  await app.press("link", "Throw away");
  await app.press("button", "Past its date");
  await app.press("button", "Throw it away");
  await app.reads("Thrown away: Past its date");
  await until("what was thrown away is not reminded of", async () =>
    (await plans()).at(-1).every(({ body }) => !body.includes(oil)),
  );

  await goTo(app, "/settings");
  await app.press("checkbox", "Remind me each morning of what to do");
  await until("no plan", async () => (await plans()).at(-1).length === 0);
});

test("phone: where it does not allow them, reminders stay off and say why", only, async (t) => {
  const app = await onAPhone(t, false);
  await goTo(app, "/settings");
  await app.press("checkbox", "Remind me each morning of what to do");
  await app.reads("The phone doesn't let Trugbook remind you.");
  assert.deepEqual(await app.evaluate(() => window.phone.plans.flat()), []);
  assert.equal(await app.evaluate(() => document.querySelector("#field-reminders").checked), false);
});

test("phone: an app that was ended out of sight opens where it was left", only, async (t) => {
  const app = await onAPhone(t);
  await goTo(app, "/rack");
  await app.sees("heading", "Rack");
  await app.evaluate(() => {
    Object.defineProperty(document, "visibilityState", { get: () => "hidden" });
    document.dispatchEvent(new Event("visibilitychange"));
    // The phone opens the bare address, as it does after it ended the app.
    setTimeout(() => location.assign("/"));
  });
  await until("the page begins anew", () => app.evaluate(() => document.visibilityState === "visible").catch(() => false));
  await app.sees("heading", "Rack");
  assert.equal(await hash(app), "#/rack");
});

test("phone: a label's link opens its bottle, whether the app was open or not", only, async (t) => {
  const app = await onAPhone(t);
  const bottle = await someBottle(app);
  await app.evaluate((code) => {
    window.phone.link = `trugbook:lot/${code}`;
    window.dispatchEvent(new Event("trugbook-link"));
  }, bottle.code);
  await until("its page", async () => (await hash(app)) === `#/bottle/${bottle.id}`);

  await app.evaluate((code) => {
    sessionStorage.setItem("link", `trugbook:lot/${code}`);
    history.replaceState(null, "", "/");
    setTimeout(() => location.reload());
  }, bottle.code);
  await until("its page again", async () => (await hash(app).catch(() => "")) === `#/bottle/${bottle.id}`);
});
