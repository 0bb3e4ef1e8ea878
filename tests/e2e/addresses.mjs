// Every screen of the demo season.

import { CODE } from "./asked.mjs";
import { idBehind, stillToCome } from "./measures.mjs";
import { until } from "./programs.mjs";

/** Goes to an address within the app, and waits until all of the screen is there. */
export async function goTo(app, address) {
  await app.evaluate((address) => void (location.hash = address), address);
  let waitsFor = [];
  await until(
    () => `${address} is there, with ${waitsFor.join(", ")}`,
    async () => (waitsFor = await app.evaluate(stillToCome)).length === 0,
  );
}

/** Every screen with its address; ids are found as a maker finds them, by links. */
export async function addresses(app) {
  const behind = async (address, start, ...words) => {
    await goTo(app, address);
    const id = await until(`a link to ${start} on ${address}`, () => app.evaluate(idBehind, { start, words }));
    return id;
  };
  const harvest = await behind("/garden", "#/harvest/");
  const tray = await behind("/rack", "#/tray/");
  const dried = await behind("/rack", "#/tray/", "dried left");
  const weighing = await behind(`/tray/${tray}`, "#/weighing/");
  const jar = await behind("/pantry", "#/jar/");
  const herb = await behind("/herbs", "#/herb/");
  const fresh = await behind("/start-tray", "#/start-tray/");
  const supply = await behind("/shelf", "#/supply/");
  const standing = await behind("/pantry", "#/jar/", "Calendula tincture");
  const strained = await behind("/pantry", "#/jar/", "Chamomile tincture");
  const bottle = await behind("/pantry", "#/bottle/", "Chamomile tincture", "open");
  const badOil = await behind("/pantry", "#/bottle/", "Throw it away");
  const recipe = await behind("/recipes", "#/recipe/");
  const bed = await behind("/trace", "#/trace/bed/", "Long bed");
  return {
    "first-words": "/garden",
    garden: "/garden",
    pick: "/pick",
    harvest: `/harvest/${harvest}`,
    "correct-harvest": `/correct-harvest/${harvest}`,
    bin: `/bin/harvest/${fresh}`,
    cook: `/cook/harvest/${fresh}`,
    "cook-dried": `/cook/tray/${dried}`,
    rack: "/rack",
    "start-tray": "/start-tray",
    "start-tray-of": `/start-tray/${fresh}`,
    tray: `/tray/${tray}`,
    weigh: `/weigh/${tray}`,
    "take-down": `/weigh/${tray}?last`,
    weighing: `/weighing/${weighing}?tray=${tray}`,
    "correct-tray": `/correct-tray/${tray}`,
    sample: `/sample/${tray}`,
    "tray-dried": `/tray/${dried}`,
    "bin-drying": `/bin/tray/${tray}`,
    "bin-dried": `/bin/tray/${dried}`,
    pantry: "/pantry",
    fill: "/fill",
    "fill-with": `/fill?lot=harvest:${fresh}`,
    "fill-proposal": `/fill?lot=harvest:${fresh}`,
    jar: `/jar/${jar}`,
    "correct-jar": `/correct-jar/${jar}`,
    compare: `/compare/${strained}`,
    fail: `/fail/${jar}`,
    empty: `/empty/${strained}`,
    "jar-standing": `/jar/${standing}`,
    "jar-strained": `/jar/${strained}`,
    strain: `/strain/${standing}`,
    "top-up": `/top-up/${standing}`,
    "fill-bottles": `/fill-bottles/${strained}`,
    "fill-bottles-told": `/fill-bottles/${strained}`,
    "pour-again": `/again/jar/${strained}`,
    "pour-on-the-marc": `/again/marc/${strained}`,
    "keep-recipe": `/keep-recipe/${standing}`,
    recipes: "/recipes",
    recipe: `/recipe/${recipe}`,
    "correct-recipe": `/correct-recipe/${recipe}`,
    card: `/card/recipe/${recipe}`,
    class: `/class/recipe/${recipe}`,
    "take-in": `/take-in/${encodeURIComponent(CODE)}`,
    "take-in-refused": "/take-in/trugbook%3Arecipe%2F1%2FAAAA",
    bottle: `/bottle/${bottle}`,
    "bottle-to-bin": `/bottle/${badOil}`,
    "label-of-a-bottle": `/labels/bottle/${bottle}`,
    "label-of-a-jar": `/labels/jar/${standing}`,
    "labels-of-the-filled": `/labels/filled/${strained}`,
    "lot-unknown": "/lot/none",
    scan: "/scan",
    use: `/use/${bottle}`,
    "use-drops": `/use/${bottle}`,
    give: `/give/${bottle}`,
    check: `/check/${bottle}`,
    "bin-bottle": `/bin-bottle/${badOil}`,
    "correct-bottle": `/correct-bottle/${bottle}`,
    droppers: "/droppers",
    dropper: "/dropper",
    reckoner: "/reckoner",
    thin: "/thin",
    "fresh-in-spirit": "/fresh-in-spirit",
    keeps: "/keeps",
    "dried-for-fresh": "/dried-for-fresh",
    measures: "/measures",
    glass: `/glass?bottle=${bottle}`,
    due: "/due",
    "due-by-week": "/due",
    "trace-from": "/trace",
    trace: `/trace/bed/${bed}`,
    plan: "/plan",
    "plan-bottles": "/plan-bottles",
    season: "/season/2026",
    beds: "/beds",
    bed: `/bed/${bed}`,
    search: "/search?text=calendula",
    more: "/more",
    herbs: "/herbs",
    herb: `/herb/${herb}`,
    "own-herb": "/own-herb",
    shelf: "/shelf",
    supply: `/supply/${supply}`,
    "new-supply": "/supply",
    settings: "/settings",
    deeds: "/deeds",
    safe: "/safe",
    "safe-restore": "/safe-restore",
    "safe-merge": "/safe-merge",
    "safe-export": "/safe-export",
    "safe-import": "/safe-import",
    "safe-check": "/safe-check",
    "safe-lost": "/safe-lost",
    "safe-rescue": "/safe-rescue",
    // Last, for it changes the journal.
    "tray-lost": `/tray/${tray}`,
  };
}
