// First, for it asks for the language.
import { language, learn } from "./words";
import "./styles/index.css";
import { mount } from "svelte";
import App from "./App.svelte";
import { openSession } from "./state/session";

document.documentElement.lang = language;
const target = document.getElementById("app");
void start();

async function start(): Promise<void> {
  const [session] = await Promise.all([openSession(), learn()]);
  const isGarden = session.route.trail.screen === "garden";
  // The other screens are many times the garden's size: it stands with its pictures before they are read.
  const others = (isGarden ? stands() : Promise.resolve()).then(() => import("./places"));
  if (target) mount(App, { target, props: { session, others } });
  void others.then(() => session.safe.resume());
}

/** Once the garden has been painted and its first pictures had their turn, or a finger is on its way elsewhere. */
function stands(): Promise<void> {
  return new Promise((done) => {
    addEventListener("pointerdown", () => done(), { once: true });
    addEventListener("keydown", () => done(), { once: true });
    requestAnimationFrame(() => setTimeout(done, 250));
  });
}
