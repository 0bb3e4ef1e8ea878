// Draws every plant of the table from the habit of its kind: how its leaves stand, how it flowers and fruits, what is under
// the ground. `node ui/drawings/draw.mjs` writes plants.svg anew, which page and papers read; `plants.tsv` says which herb takes
// which drawing and why, from memory. A symbol is a box of 160 by 200 with paths in whole units, each with a class that names
// what it is. A path begins with M and goes on with l, c and a, counted from where it stands, and Z; a is always a half circle.

import { writeFileSync } from "node:fs";

import { habits } from "./habits.mjs";

/** The box less what the widest line needs, and where every plant stands in it. */
const [WIDE, HIGH, EDGE] = [160, 200, 2];
const FOOT = [80, 188];
const steps = (d) => [...d.matchAll(/([MLCaZ])([^MLCaZ]*)/g)].map(([, letter, rest]) => [letter, rest.match(/-?\d+/g)?.map(Number) ?? []]);

/** The shapes made smaller about their foot by as much as the tallest or widest of them needs to stay in the box. */
function fitted(shapes) {
  const room = [
    [FOOT[0] - EDGE, WIDE - FOOT[0] - EDGE],
    [FOOT[1] - EDGE, HIGH - FOOT[1] - EDGE],
  ];
  let share = 1;
  for (const [letter, n] of shapes.flatMap(({ d }) => steps(d))) {
    if (letter === "a") continue;
    n.forEach((each, at) => {
      const off = each - FOOT[at % 2];
      if (off !== 0) share = Math.min(share, room[at % 2][off < 0 ? 0 : 1] / Math.abs(off));
    });
  }
  if (share === 1) return shapes;
  const placed = (each, at) => Math.round(FOOT[at % 2] + (each - FOOT[at % 2]) * share);
  const round = ([r, , ...n]) => {
    const smaller = Math.max(1, Math.round(r * share));
    return [smaller, smaller, n[0], n[1], n[2], Math.sign(n[3]) * 2 * smaller, 0];
  };
  return shapes.map(({ kind, d }) => ({
    kind,
    d: steps(d)
      .map(([letter, n]) => letter + (letter === "a" ? round(n) : n.map(placed)).join(" "))
      .join(""),
  }));
}

/** A path with its lines and curves counted from where they begin, which takes less room. */
function relative(d) {
  let [x, y, fx, fy] = [0, 0, 0, 0];
  let last = "";
  let text = "";
  const put = (letter, numbers) => {
    const joined = numbers.map((n, at) => (at === 0 || n < 0 ? `${n}` : ` ${n}`)).join("");
    text += letter === last && letter !== "M" ? (numbers[0] < 0 ? joined : ` ${joined}`) : letter + joined;
    last = letter;
  };
  for (const [letter, n] of steps(d)) {
    if (letter === "M") [x, y, fx, fy] = [n[0], n[1], n[0], n[1]];
    if (letter === "Z") [x, y] = [fx, fy];
    if (letter === "Z" || letter === "M") put(letter, n);
    else if (letter === "a") { put("a", n); x += n[5]; y += n[6]; }
    else { put(letter.toLowerCase(), n.map((each, at) => each - (at % 2 ? y : x))); [x, y] = n.slice(-2); }
  }
  return text;
}

/** Neighbours of one kind are one path, and all stems lie behind the rest. */
function gathered(shapes) {
  const behind = ["stem", "rootlet"];
  const found = [];
  for (const { kind, d } of [...shapes.filter((one) => behind.includes(one.kind)), ...shapes.filter((one) => !behind.includes(one.kind))]) {
    const before = found.at(-1);
    if (before?.kind === kind) before.d += relative(d);
    else found.push({ kind, d: relative(d) });
  }
  return found;
}

const symbols = Object.entries(habits).map(([name, habit]) => {
  const paths = gathered(fitted(habit())).map(({ kind, d }) => `<path class="${kind}" d="${d}"/>`);
  return `<symbol id="${name}">\n${paths.join("\n")}\n</symbol>\n`;
});
const text = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 160 200">\n${symbols.join("")}</svg>\n`;
writeFileSync(new URL("plants.svg", import.meta.url), text);
console.log(`${symbols.length} plants, ${text.length} bytes`);
