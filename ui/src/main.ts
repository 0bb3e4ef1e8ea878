import "./styles/index.css";
import { mount } from "svelte";
import App from "./App.svelte";
import { openBook } from "./state";
import { language } from "./words";

document.documentElement.lang = language;
// Asked for before the first pictures, or they would wait behind every thumbnail of the garden.
for (const face of ["600 1em Alegreya", "italic 500 1em Alegreya", "500 1em 'Alegreya Sans'", "700 1em 'Alegreya Sans'"]) {
  void document.fonts.load(face);
}
const target = document.getElementById("app");
const book = await openBook();
const isGarden = book.route.trail.screen === "garden";
// The other screens are many times the garden's size: it stands with its pictures before they are read.
const others = (isGarden ? stands() : Promise.resolve()).then(async () => (await import("./screens")).screens);
if (target) mount(App, { target, props: { book, others } });

/** Once the garden has been painted and its first pictures had their turn, or a finger is on its way elsewhere. */
function stands(): Promise<void> {
  return new Promise((done) => {
    addEventListener("pointerdown", () => done(), { once: true });
    addEventListener("keydown", () => done(), { once: true });
    requestAnimationFrame(() => setTimeout(done, 250));
  });
}
