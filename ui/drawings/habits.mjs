// Every drawing by the habit of its plant. The table `plants.tsv` says which herb takes which, and why.

import { dice } from "./dice.mjs";
import { UP, at, dot, feather, leaf, line, lobed, pairs, panicle, pinnate, rays, rootlets, spike, stem, stemOf, taproot, umbel } from "./strokes.mjs";

const upright = (top = 40, sway = -8, foot = 188) => stemOf(80, foot, 82, top, sway);
const tip = (curve) => curve(1);
/** Several stems from one foot. */
const tuft = (ends, foot = 188) => ends.map(([x, y, sway]) => stemOf(80, foot, x, y, sway));

/** A square stem with opposite leaves, the family of mints. */
function mint({ count, long, wide, teeth = 0, top = 40, sway = -8, flower, broad = 11, high = 34, spread = 0.9, axils = false }) {
  const c = upright(top, sway);
  const end = tip(c);
  const found = [stem(c), ...pairs(c, count, long, wide, { teeth, spread })];
  if (axils) for (let i = 1; i < count; i++) { const p = c(0.1 + (0.78 * i) / (count - 1)); for (const side of [-1, 1]) found.push(...leaf(p.x, p.y, p.a + side * 0.5, 11, 0.34, { kind: flower, rib: false }), ...leaf(p.x, p.y, p.a + side * 1.3, 10, 0.34, { kind: flower, rib: false })); }
  if (flower && !axils) found.push(...spike(end.x, end.y + 8, high, broad, 6, flower));
  else for (const side of [-1, 1]) found.push(...leaf(end.x, end.y + 4, end.a + side * 0.3, long * 0.34, wide, { teeth: teeth ? 4 : 0 }));
  return found;
}

/** Leaves around the foot, their tips outward. */
function rosette(count, long, wide, more = {}, foot = 150) {
  return Array.from({ length: count }, (_, i) => {
    const turn = (i / (count - 1) - 0.5) * 2.5;
    return leaf(80, foot, UP + turn, long * (0.82 + 0.18 * Math.cos(turn * 1.6)), wide, more);
  }).sort(() => 0).flat();
}

const heart = (x, y, angle, size, more = {}) => leaf(x, y, angle, size, 0.62, more);
const fivePetals = (x, y, size, kind, eye = "yellow") => rays(x, y, size, 5, kind, { eye, disc: 0.24, wide: 0.44 });
const trefoil = (x, y, angle, size, more = {}) => [-1, 1, 0].flatMap((side) => leaf(x, y, angle + side * 0.95, size, 0.34, more));

/** A twig that leans, for trees and shrubs. */
const twig = (sway = 14) => stemOf(34, 186, 124, 36, sway);

function headed({ kind, eye, count, radius, disc, leaves, flat = 1, wide, root }) {
  const c = upright(root ? 34 : 46, -7, root ? 128 : 188);
  const end = tip(c);
  return [...(root ? root(80, 126) : []), stem(c), ...leaves(c), ...rays(end.x, end.y, radius, count, kind, { eye, disc, flat, wide })];
}

export const habits = {
  mint: () => mint({ count: 6, long: 52, wide: 0.24, teeth: 7, top: 52, flower: "violet" }),
  balm: () => mint({ count: 5, long: 46, wide: 0.36, teeth: 6, sway: 8, top: 30 }),
  sage: () => mint({ count: 4, long: 58, wide: 0.2, sway: -6, top: 34 }),
  basil: () => mint({ count: 4, long: 48, wide: 0.36, top: 58, flower: "white", broad: 9, high: 38, spread: 1 }),
  hyssop: () => mint({ count: 7, long: 34, wide: 0.14, top: 62, flower: "blue", broad: 8, high: 48, spread: 0.7 }),
  nettle: () => {
    const c = upright(30, 6);
    const tassels = [0.45, 0.62, 0.78].flatMap((t) => [-1, 1].map((side) => { const p = c(t); return { kind: "feather", d: line([p.x, p.y], [p.x + side * 12, p.y + 6], [p.x + side * 15, p.y + 22]).d + line([p.x, p.y], [p.x + side * 6, p.y + 10], [p.x + side * 8, p.y + 26]).d }; }));
    return [stem(c), ...tassels, ...pairs(c, 6, 46, 0.3, { teeth: 8, spread: 1 }), ...leaf(82, 32, UP, 16, 0.3, { teeth: 4 })];
  },
  motherwort: () => {
    const c = upright(26, -4);
    const found = [stem(c)];
    for (let i = 0; i < 6; i++) { const p = c(0.12 + i * 0.15); for (const side of [-1, 1]) { const foot = at(p.x, p.y, p.a + side * 1.1, 12 - i); found.push(line([p.x, p.y], foot), ...lobed(...foot, p.a + side * 1.1, 34 - i * 4, 3, { open: 1.1, deep: 0.5 })); if (i > 1) found.push(dot(p.x + side * 5, p.y - 3, 4, "pink")); } }
    return found;
  },
  thyme: () => tuft([[40, 70, -6], [66, 44, -4], [96, 40, 6], [124, 74, 6]]).flatMap((c) => { const p = tip(c); return [stem(c), ...pairs(c, 6, 14, 0.32, { from: 0.2, spread: 1, shrink: 0.2, rib: false }), ...[[-5, 0], [5, 0], [0, -6], [-3, -10], [4, -9]].map(([x, y]) => dot(p.x + x, p.y + y, 4, "pink"))]; }),
  oregano: () => {
    const c = upright(52, -6);
    const tops = [[-26, 8], [-12, -8], [4, -14], [20, -6], [32, 10]];
    return [stem(c), ...pairs(c, 6, 30, 0.36, { spread: 1, to: 0.8 }), ...tops.flatMap(([x, y]) => [line([80, 76], [82 + x, 52 + y]), ...[[-4, 2], [4, 2], [0, -4], [0, 4]].map(([u, v]) => dot(82 + x + u, 48 + y + v, 4, "pink"))])];
  },
  rosemary: () => [[80, 188, 84, 22, -6], [80, 150, 128, 66, 5], [80, 162, 36, 78, -5]].flatMap(([x0, y0, x1, y1, sway]) => { const c = stemOf(x0, y0, x1, y1, sway); return [stem(c), ...pairs(c, 10, 21, 0.11, { from: 0.14, to: 0.98, spread: 0.6, shrink: 0.3, rib: false }), ...[0.55, 0.8].flatMap((t) => { const p = c(t); return leaf(p.x, p.y, p.a + 0.6, 9, 0.4, { kind: "blue", rib: false }); })]; }),
  lavender: () => [...tuft([[44, 66, -5], [62, 42, -3], [84, 30, 3], [106, 44, 4], [122, 70, 4]]).flatMap((c) => { const p = tip(c); return [stem(c), ...spike(p.x, p.y + 22, 28, 7, 6, "violet")]; }), ...Array.from({ length: 9 }, (_, i) => leaf(80, 186, UP + (i - 4) * 0.27, 60, 0.07, { rib: false })).flat()],
  calendula: () => headed({ kind: "orange", eye: "brown", count: 16, wide: 0.16, radius: 34, disc: 0.34, leaves: (c) => pairs(c, 6, 48, 0.19, { turn: true, from: 0.06, to: 0.76 }) }),
  sunhead: () => headed({ kind: "yellow", eye: "brown", count: 13, radius: 34, disc: 0.36, wide: 0.12, leaves: (c) => pairs(c, 4, 62, 0.3, { turn: true, from: 0.05, to: 0.7, teeth: 7 }), root: (x, y) => taproot(x, y, 62, 20, "sun") }),
  arnica: () => headed({ kind: "yellow", eye: "orange", count: 13, radius: 30, disc: 0.36, leaves: (c) => [...pairs(c, 1, 26, 0.2, { from: 0.55 }), ...rosette(4, 50, 0.22, {}, 186)] }),
  chamomile: () => tuft([[44, 74, -8], [84, 36, -3], [120, 62, 10]]).flatMap((c, i) => { const p = tip(c); return [stem(c), ...[0.25, 0.45, 0.65].flatMap((t, k) => { const q = c(t); return feather(q.x, q.y, q.a + (k % 2 ? 0.9 : -0.9), 26, 5, 9); }), ...rays(p.x, p.y, 17 + i, 10, "white", { eye: "yellow", disc: 0.42 })]; }),
  feverfew: () => { const c = upright(74, -5); return [stem(c), ...[0.1, 0.32, 0.54].flatMap((t, i) => { const p = c(t); return [-1, 1].flatMap((side) => lobed(p.x, p.y, p.a + side * 1, 46 - i * 8, 4, { open: 1.3, deep: 0.5 })); }), ...[[44, 62], [66, 46], [96, 42], [118, 60]].flatMap(([x, y]) => [line([81, 92], [x, y]), ...rays(x, y, 13, 11, "white", { eye: "yellow", disc: 0.45 })])]; },
  yarrow: () => { const c = upright(72, -6); return [stem(c), ...[0.06, 0.2, 0.34, 0.5, 0.66].flatMap((t, i) => { const p = c(t); return feather(p.x, p.y, p.a + (i % 2 ? 0.75 : -0.75), 50 - i * 6, 9, 8); }), ...umbel(82, 76, 9, 44, 4, "white", { fan: 1.15, dome: 0.5 })]; },
  coneflower: () => { const c = upright(52, -5, 122); const rayed = Array.from({ length: 12 }, (_, i) => leaf(82, 44, Math.PI * (0.06 + (0.88 * i) / 11), 30, 0.16, { kind: "pink", rib: false })).flat(); return [...taproot(80, 120, 72, 16, "cone"), ...rosette(4, 54, 0.22, {}, 124), stem(c), ...rayed, { kind: "brown", d: "M62 46C62 22 72 16 82 16C92 16 102 22 102 46C90 52 74 52 62 46Z" }]; },
  dandelion: () => { const c = stemOf(80, 124, 92, 40, 8); const saw = Array.from({ length: 7 }, (_, i) => leaf(80, 126, UP + (i - 3) * 0.42, 62, 0.24, { teeth: 5 })).flat(); return [...taproot(80, 124, 70, 18, "dan"), ...saw, stem(c), ...rays(92, 36, 22, 15, "yellow", { eye: "orange", disc: 0.25 })]; },
  chicory: () => { const c = upright(34, 8); return [stem(c), ...rosette(4, 48, 0.2, { teeth: 4 }, 186), ...[[0.42, -1], [0.6, 1], [0.78, -1], [1, 1]].flatMap(([t, side]) => { const p = c(t); const [x, y] = [p.x + side * (t === 1 ? 0 : 18), p.y - 8]; return [line([p.x, p.y], [x, y]), ...rays(x, y, 15, 10, "blue", { eye: "violet", disc: 0.2 })]; })]; },
  plantain: () => [...rosette(6, 96, 0.2, {}, 184), ...[[52, 48], [82, 30], [112, 54]].flatMap(([x, y]) => { const c = stemOf(80, 182, x, y, 4); return [stem(c), ...leaf(x, y + 22, UP, 40, 0.12, { kind: "brown", rib: false })]; })],
  dock: () => { const c = upright(34, 5, 140); return [...taproot(80, 138, 56, 18, "dock"), ...rosette(5, 74, 0.17, {}, 142), stem(c), ...panicle(c, 0.45, 6, 20, 3, "brown")]; },
  comfrey: () => { const c = upright(50, 6, 136); const p = tip(c); return [...taproot(80, 134, 60, 24, "com"), ...rosette(5, 70, 0.26, {}, 138), stem(c), ...pairs(c, 2, 40, 0.22, { from: 0.4, to: 0.7 }), ...[-22, -10, 2, 14, 24].flatMap((x, i) => [line([p.x, p.y], [p.x + x, p.y + 2 + Math.abs(x) / 4]), ...leaf(p.x + x, p.y + 2 + Math.abs(x) / 4, Math.PI / 2, 18, 0.34, { kind: i % 2 ? "pink" : "violet", rib: false })])]; },
  borage: () => { const c = upright(60, -6); return [stem(c), ...pairs(c, 4, 50, 0.32, { turn: true }), ...[[50, 50], [74, 34], [102, 40], [118, 62]].flatMap(([x, y]) => [line([82, 78], [x, y]), ...rays(x, y, 14, 5, "blue", { eye: "dark", disc: 0.2, wide: 0.24 })])]; },
  mullein: () => { const c = upright(24, 2, 160); return [...rosette(6, 76, 0.27, {}, 174), stem(c), ...pairs(c, 4, 34, 0.26, { to: 0.5 }), ...Array.from({ length: 9 }, (_, i) => { const p = c(0.52 + i * 0.055); return [-1, 1].map((side) => dot(p.x + side * (7 - i * 0.4), p.y + (i % 2) * 2, 6 - i * 0.25, "yellow")); }).flat(), dot(82, 22, 4, "green")]; },
  marshmallow: () => { const c = upright(30, 6, 150); return [...taproot(80, 148, 48, 16, "mal"), stem(c), ...[0.1, 0.3, 0.5, 0.7].flatMap((t, i) => { const p = c(t); const side = i % 2 ? 1 : -1; return [...lobed(p.x, p.y, p.a + side * 0.9, 46 - i * 5, 3, { open: 1.2, deep: 0.3 }), ...fivePetals(p.x - side * 9, p.y - 8, 12, "pink", "violet")]; }), ...fivePetals(82, 30, 13, "pink", "violet")]; },
  ladysmantle: () => [[44, 110], [116, 104], [80, 70]].flatMap(([x, y]) => [line([80, 188], [x, y]), ...lobed(x, y, Math.atan2(y - 200, x - 80), 52, 9, { open: 2.5, deep: 0.2 })]).concat([[60, 44], [84, 30], [104, 46]].flatMap(([x, y]) => [line([80, 120], [x, y]), ...[[-5, 0], [5, 1], [0, -5], [0, 4]].map(([u, v]) => dot(x + u, y + v, 4, "yellow"))])),
  violet: () => [...[[38, 124, 3.9], [120, 120, 5.5], [60, 86, 4.3], [104, 78, 5.2]].flatMap(([x, y, a]) => [line([80, 186], [x, y]), ...heart(x, y, a, 40)]), ...[[72, 60], [92, 44]].flatMap(([x, y]) => [line([80, 186], [x, y + 6]), ...rays(x, y, 15, 5, "violet", { eye: "yellow", disc: 0.2, wide: 0.34 })])],
  clover: () => { const c = upright(66, 6); return [stem(c), ...[[0.25, -1], [0.5, 1], [0.75, -1]].flatMap(([t, side]) => { const p = c(t); const [x, y] = at(p.x, p.y, p.a + side * 0.9, 22); return [line([p.x, p.y], [x, y]), ...trefoil(x, y, p.a + side * 0.7, 30)]; }), ...Array.from({ length: 17 }, (_, i) => leaf(82, 62, UP + (i - 8) * 0.25, 26 - Math.abs(i - 8) * 0.7, 0.14, { kind: "pink", rib: false })).flat()]; },
  johnswort: () => { const c = upright(56, -5); return [stem(c), ...pairs(c, 8, 26, 0.26, { spread: 0.95, to: 0.82, rib: false }), ...[[46, 58], [62, 40], [82, 32], [104, 38], [122, 56]].flatMap(([x, y]) => [line([80, 86], [x, y]), ...rays(x, y, 12, 5, "yellow", { eye: "orange", disc: 0.26, wide: 0.3 })])]; },
  goldenrod: () => { const c = upright(22, 6); return [stem(c), ...pairs(c, 6, 44, 0.15, { turn: true, to: 0.5, teeth: 5 }), ...panicle(c, 0.5, 8, 24, 4, "yellow")]; },
  meadowsweet: () => { const c = upright(56, -6); return [stem(c), ...[0.12, 0.36, 0.6].flatMap((t, i) => { const p = c(t); return pinnate(p.x, p.y, p.a + (i % 2 ? 0.8 : -0.8), 58 - i * 8, 3, 22, 0.32); }), ...umbel(82, 64, 7, 34, 4, "cream", { each: 5, fan: 1, seed: "mead" })]; },
  agrimony: () => { const c = upright(24, 4); return [stem(c), ...[0.1, 0.26, 0.42].flatMap((t, i) => { const p = c(t); return pinnate(p.x, p.y, p.a + (i % 2 ? 0.85 : -0.85), 54 - i * 6, 3, 20, 0.3); }), ...Array.from({ length: 8 }, (_, i) => { const p = c(0.55 + i * 0.055); return dot(p.x + (i % 2 ? 7 : -7), p.y, 5 - i * 0.2, "yellow"); })]; },
  wormwood: () => { const c = upright(24, 6); return [stem(c), ...[0.08, 0.22, 0.36, 0.5].flatMap((t, i) => { const p = c(t); return lobed(p.x, p.y, p.a + (i % 2 ? 0.85 : -0.85), 54 - i * 6, 5, { open: 1, deep: 0.72, kind: "grey" }); }), ...panicle(c, 0.56, 6, 18, 3, "yellow")]; },
  valerian: () => { const c = upright(50, -5, 146); return [...rootlets(80, 146, 9, 44, "val"), stem(c), ...[0.08, 0.36, 0.64].flatMap((t, i) => { const p = c(t); return [-1, 1].flatMap((side) => pinnate(p.x, p.y, p.a + side * 0.85, 48 - i * 10, 2, 18, 0.28)); }), ...umbel(82, 58, 7, 28, 4, "pink", { fan: 1.2, each: 4, seed: "val" })]; },
  fennel: () => { const c = upright(66, -4); return [stem(c), ...[0.08, 0.28, 0.48, 0.68].flatMap((t, i) => { const p = c(t); return feather(p.x, p.y, p.a + (i % 2 ? 0.6 : -0.6), 56 - i * 8, 7, 18); }), ...umbel(82, 70, 9, 40, 3, "yellow", { fan: 0.95 })]; },
  parsley: () => tuft([[40, 96, -5], [80, 60, 3], [120, 92, 5]]).flatMap((c) => { const p = tip(c); return [stem(c), ...[-0.9, 0, 0.9].flatMap((turn) => lobed(...at(p.x, p.y, p.a + turn, 8), p.a + turn, 30, 4, { open: 1.2, deep: 0.5 }))]; }),
  angelica: () => { const c = upright(74, 4, 146); return [...taproot(80, 144, 52, 22, "ang"), stem(c), ...[0.1, 0.4].flatMap((t, i) => { const p = c(t); return [-1, 1].flatMap((side) => pinnate(p.x, p.y, p.a + side * 0.95, 54 - i * 12, 2, 24, 0.36)); }), ...umbel(82, 78, 11, 44, 4, "cream", { fan: 1.5, dome: 0.1 })]; },
  elderflower: () => { const c = stemOf(80, 190, 80, 86, 4); return [stem(c), ...[0.2, 0.55].flatMap((t, i) => { const p = c(t); return [-1, 1].flatMap((side) => pinnate(p.x, p.y, p.a + side * 1.05, 58 - i * 8, 2, 26, 0.3)); }), ...umbel(80, 88, 9, 50, 4, "white", { fan: 1.15, each: 3, dome: 0.5, seed: "elder" })]; },
  elderberry: () => { const roll = dice("eb"); const arms = Array.from({ length: 7 }, (_, i) => at(80, 92, Math.PI / 2 + (i - 3) * 0.36, 58 - Math.abs(i - 3) * 5)); return [line([80, 16], [80, 92]), ...[[80, 30, 0.5], [80, 30, 2.64]].flatMap(([x, y, a]) => pinnate(x, y, a, 66, 2, 28, 0.3)), ...arms.map((end) => line([80, 92], end)), ...arms.flatMap(([x, y]) => Array.from({ length: 5 }, (_, k) => dot(x + (k - 2) * 6, y + ((k * 7) % 5) * 4 - 6 + roll() * 3, 5, "dark")))]; },
  hawthorn: () => { const c = twig(); return [stem(c), ...[0.25, 0.45, 0.65, 0.85].flatMap((t, i) => { const p = c(t); const side = i % 2 ? 1 : -1; return [...lobed(p.x, p.y, p.a + side * 1, 40, 4, { open: 1.1, deep: 0.45 }), ...[0, 15].flatMap((more) => { const [x, y] = at(p.x, p.y, p.a - side * 0.9, 16 + more); return [line([p.x, p.y], [x, y]), ...fivePetals(x, y, 9, "white", "pink")]; })]; })]; },
  haws: () => { const c = twig(); return [stem(c), ...[0.25, 0.45, 0.65, 0.85].flatMap((t, i) => { const p = c(t); const side = i % 2 ? 1 : -1; return [...lobed(p.x, p.y, p.a + side * 1, 40, 4, { open: 1.1, deep: 0.45 }), ...[-0.35, 0.2, 0.7].flatMap((turn) => { const end = at(p.x, p.y, p.a - side * (0.9 + turn), 22); return [line([p.x, p.y], end), dot(...end, 7, "red")]; })]; })]; },
  rose: () => { const c = upright(60, -8); return [stem(c), ...[0.1, 0.38, 0.66].flatMap((t, i) => { const p = c(t); return pinnate(p.x, p.y, p.a + (i % 2 ? 0.85 : -0.85), 52, 2, 22, 0.36); }), ...rays(80, 52, 32, 5, "pink", { eye: "yellow", disc: 0.26, wide: 0.5 })]; },
  hips: () => { const c = twig(16); return [stem(c), ...[0.2, 0.5, 0.8].flatMap((t, i) => { const p = c(t); const side = i % 2 ? 1 : -1; const end = at(p.x, p.y, p.a - side * 0.9, 16); return [...pinnate(p.x, p.y, p.a + side * 0.9, 46, 2, 20, 0.36), line([p.x, p.y], end), ...leaf(...end, p.a - side * 0.9, 27, 0.5, { kind: "red", rib: false })]; })]; },
  bramble: () => bramble("dark"),
  raspberry: () => bramble("red"),
  strawberry: () => [...[[40, 96, 4.2], [122, 92, 5.2], [80, 62, 4.7]].flatMap(([x, y, a]) => [line([80, 170], [x, y]), ...[-0.95, 0.95, 0].flatMap((turn) => leaf(x, y, a + turn, 34, 0.42, { teeth: 6 }))]), ...[[58, 128], [104, 134], [84, 150]].flatMap(([x, y]) => [line([80, 168], [x, y - 12]), { kind: "red", d: `M${x - 9} ${y - 12}C${x - 10} ${y} ${x - 4} ${y + 8} ${x} ${y + 10}C${x + 4} ${y + 8} ${x + 10} ${y} ${x + 9} ${y - 12}Z` }]), ...rootlets(80, 170, 6, 24, "str")],
  currant: () => { const c = twig(10); return [stem(c), ...[0.3, 0.6, 0.88].flatMap((t, i) => { const p = c(t); const side = i % 2 ? 1 : -1; const foot = at(p.x, p.y, p.a + side * 1, 14); return [line([p.x, p.y], foot), ...lobed(...foot, p.a + side * 1, 42, 3, { open: 1.7, deep: 0.3 }), ...Array.from({ length: 5 }, (_, k) => dot(p.x - side * (6 + (k % 2) * 6), p.y + 10 + k * 8, 5, "dark"))]; })]; },

  juniper: () => needles("dark"),
  pine: () => needles("brown"),
  lime: () => { const c = twig(12); return [stem(c), ...[0.24, 0.5, 0.78].flatMap((t, i) => { const p = c(t); const side = i % 2 ? 1 : -1; return heart(p.x, p.y, p.a + side * 0.9, 48, { teeth: 8 }); }), ...leaf(88, 92, 1, 60, 0.14, { kind: "cream" }), ...[[106, 142], [118, 148], [128, 138]].flatMap(([x, y]) => [line([102, 114], [x, y]), ...rays(x, y, 8, 5, "yellow", { eye: "orange", disc: 0.3, wide: 0.3 })])]; },
  birch: () => { const c = twig(12); return [stem(c), ...[0.2, 0.38, 0.56, 0.74, 0.92].flatMap((t, i) => { const p = c(t); return leaf(p.x, p.y, p.a + (i % 2 ? 0.95 : -0.95), 40, 0.44, { teeth: 7 }); }), ...leaf(120, 60, 1.4, 34, 0.14, { kind: "brown", rib: false })]; },
  willow: () => { const c = twig(14); return [stem(c), ...pairs(c, 7, 48, 0.14, { turn: true, from: 0.14, to: 0.96, shrink: 0.25, spread: 0.7 })]; },
  vine: () => { const c = stemOf(40, 190, 112, 20, -22); return [stem(c), ...[0.25, 0.52, 0.8].flatMap((t, i) => { const p = c(t); const side = i % 2 ? 1 : -1; const foot = at(p.x, p.y, p.a + side * 1, 12); return [line([p.x, p.y], foot), ...lobed(...foot, p.a + side * 1, 48 - i * 4, 5, { open: 1.9, deep: 0.35 })]; })]; },
  hops: () => { const c = stemOf(40, 190, 112, 20, -22); const cone = (x, y) => [[0, 0], [-5, 5], [5, 5], [-6, 12], [6, 12], [0, 14], [0, 20]].flatMap(([u, v]) => leaf(x + u, y + v, Math.PI / 2, 12, 0.42, { kind: "green", rib: false })); return [stem(c), ...[0.3, 0.66].flatMap((t, i) => { const p = c(t); const side = i % 2 ? 1 : -1; const foot = at(p.x, p.y, p.a + side * 1, 12); return [line([p.x, p.y], foot), ...lobed(...foot, p.a + side * 1, 50 - i * 6, 3, { open: 1.7, deep: 0.5 })]; }), ...cone(94, 96), ...cone(114, 84), ...cone(58, 60), ...cone(120, 36)]; },
  passionflower: () => { const c = stemOf(36, 190, 124, 30, -18); return [stem(c), ...[0.2, 0.55, 0.86].flatMap((t, i) => { const p = c(t); return lobed(p.x, p.y, p.a + (i % 2 ? 1 : -1), 48 - i * 5, 3, { open: 1, deep: 0.62 }); }), ...rays(98, 96, 30, 10, "white", { eye: "violet", disc: 0.36, wide: 0.18 }), ...rays(98, 96, 18, 12, "violet", { eye: "yellow", disc: 0.3, wide: 0.06 })]; },
  schisandra: () => { const c = stemOf(44, 190, 108, 22, -20); return [stem(c), ...[0.2, 0.45, 0.7, 0.94].flatMap((t, i) => { const p = c(t); return leaf(p.x, p.y, p.a + (i % 2 ? 0.95 : -0.95), 44, 0.4); }), ...[[102, 84], [54, 108]].flatMap(([x, y]) => [line([x - 4, y - 16], [x, y + 34]), ...Array.from({ length: 8 }, (_, k) => dot(x + (k % 2 ? 5 : -5), y + k * 5, 5, "red"))])]; },
  licorice: () => { const c = upright(40, 6, 140); return [...taproot(80, 138, 58, 12, "lic"), stem(c), ...[0.15, 0.4, 0.65, 0.9].flatMap((t, i) => { const p = c(t); return pinnate(p.x, p.y, p.a + (i % 2 ? 0.8 : -0.8), 56 - i * 5, 4, 16, 0.3); }), ...spike(92, 66, 22, 6, 5, "violet")]; },
  burdock: () => { const c = upright(50, 5, 132); return [...taproot(80, 130, 66, 16, "bur"), ...[-1.05, 1.05, 0.25].flatMap((turn) => heart(80, 134, UP + turn, 66)), stem(c), ...[[82, 46], [58, 62], [106, 64]].flatMap(([x, y]) => [line([80, 90], [x, y]), dot(x, y, 12, "green"), ...Array.from({ length: 7 }, (_, i) => leaf(x, y - 6, UP + (i - 3) * 0.28, 16, 0.14, { kind: "violet", rib: false })).flat()])]; },
  thistle: () => { const c = upright(60, -5); return [stem(c), ...[0.08, 0.3, 0.52].flatMap((t, i) => { const p = c(t); return [-1, 1].flatMap((side) => leaf(p.x, p.y, p.a + side * 0.9, 58 - i * 10, 0.3, { teeth: 6 })); }), ...Array.from({ length: 9 }, (_, i) => leaf(82, 54, UP + (i - 4) * 0.22, 30, 0.1, { kind: "violet", rib: false })).flat(), dot(82, 58, 15, "green"), ...Array.from({ length: 7 }, (_, i) => line(at(82, 58, Math.PI / 2 + (i - 3) * 0.5, 12), at(82, 58, Math.PI / 2 + (i - 3) * 0.5, 22)))]; },
  garlic: () => [...rootlets(80, 176, 7, 18, "gar"), ...[-1, 1].flatMap((side) => [0, 1].flatMap((i) => leaf(80, 128 - i * 14, UP + side * (0.32 + i * 0.2), 92 - i * 20, 0.06, { rib: false }))), line([80, 140], [80, 34]), ...leaf(80, 48, UP, 26, 0.3, { kind: "cream", rib: false }), { kind: "bulb", d: "M76 132C60 146 56 166 70 176C76 180 84 180 90 176C104 166 100 146 84 132Z" }, { kind: "vein", d: "M78 134C70 150 70 166 76 176M82 134C90 150 90 166 84 176" }],
  ramsons: () => [...[-0.75, 0.7, -0.2].flatMap((turn) => leaf(80, 170, UP + turn, 104, 0.22)), line([82, 170], [88, 44]), ...umbel(88, 48, 7, 18, 4, "white", { fan: 1.4, each: 2 }), { kind: "bulb", d: "M76 164C68 172 70 186 80 190C90 186 92 172 84 164Z" }],
  chives: () => [...Array.from({ length: 8 }, (_, i) => leaf(80, 186, UP + (i - 3.5) * 0.16, 118 - Math.abs(i - 3.5) * 10, 0.025, { rib: false })).flat(), ...[[64, 44], [96, 40]].flatMap(([x, y]) => [line([80, 186], [x, y]), ...umbel(x, y + 6, 7, 14, 4, "violet", { fan: 1.5, each: 2 })])],
  grass: () => [...Array.from({ length: 9 }, (_, i) => leaf(80, 186, UP + (i - 4) * 0.17, 150 - Math.abs(i - 4) * 16, 0.035, { rib: false })).flat()],
  oat: () => { const c = upright(24, 6); return [stem(c), ...[-0.5, 0.45].flatMap((turn, i) => leaf(80, 150 - i * 30, UP + turn, 80, 0.06)), ...[0.5, 0.62, 0.74, 0.86, 0.98].flatMap((t, i) => { const p = c(t); return [-1, 1].flatMap((side) => { const end = [p.x + side * (26 - i * 3), p.y + 8]; return [line([p.x, p.y], end), ...leaf(...end, Math.PI / 2, 17, 0.26, { kind: "yellow", rib: false })]; }); })]; },
  ginger: () => { const c = stemOf(76, 150, 84, 18, 4); return [{ kind: "root", d: "M28 164C28 150 48 150 56 156C58 142 74 142 78 154C88 146 102 148 102 158C116 152 132 158 132 168C132 180 112 182 104 178C98 188 82 188 76 180C66 188 50 186 48 176C38 180 28 176 28 164Z" }, { kind: "vein", d: "M52 158L54 176M78 154L78 178M102 158L102 178" }, stem(c), ...pairs(c, 7, 58, 0.12, { turn: true, from: 0.2, to: 0.96, shrink: 0.25, spread: 0.7 })]; },
  horsetail: () => { const c = upright(20, 2); return [stem(c), ...Array.from({ length: 9 }, (_, i) => { const p = c(0.18 + i * 0.09); const long = 34 - i * 3; return { kind: "feather", d: [-2, -1, 1, 2].map((k) => `M${Math.round(p.x)} ${Math.round(p.y)}L${Math.round(p.x + k * long * 0.5)} ${Math.round(p.y - long * (1 - Math.abs(k) * 0.28))}`).join("") }; })]; },
  gentian: () => { const c = upright(34, 3, 136); return [...taproot(80, 134, 62, 16, "gen"), stem(c), ...pairs(c, 4, 50, 0.3, { to: 0.8 }), ...[0.6, 0.8, 1].flatMap((t) => { const p = c(t); return [-0.5, 0, 0.5].flatMap((turn) => leaf(p.x, p.y, UP + turn, 20, 0.22, { kind: "yellow", rib: false })); })]; },
  skullcap: () => mint({ count: 6, long: 34, wide: 0.28, teeth: 5, top: 28, sway: 5, flower: "blue", axils: true }),
  horehound: () => mint({ count: 6, long: 32, wide: 0.44, teeth: 6, top: 28, flower: "white", axils: true }),
  selfheal: () => { const c = upright(60, 4); return [stem(c), ...pairs(c, 4, 42, 0.28, { to: 0.75 }), ...spike(82, 64, 30, 15, 5, "violet")]; },
  vervain: () => { const c = upright(70, 3); return [stem(c), ...[0.12, 0.4, 0.68].flatMap((t, i) => { const p = c(t); return [-1, 1].flatMap((side) => lobed(p.x, p.y, p.a + side * 0.95, 40 - i * 8, 4, { open: 0.9, deep: 0.5 })); }), ...[[50, 42], [82, 22], [114, 44]].flatMap(([x, y]) => { const s = stemOf(81, 84, x, y, 2); return [stem(s), ...[0.45, 0.6, 0.75, 0.9].map((t, k) => dot(s(t).x + (k % 2 ? 3 : -3), s(t).y, 3, "violet"))]; })]; },
  fireweed: () => { const c = upright(22, 4); return [stem(c), ...pairs(c, 8, 44, 0.12, { turn: true, to: 0.56, spread: 0.8 }), ...Array.from({ length: 7 }, (_, i) => { const p = c(0.6 + i * 0.06); return fivePetals(p.x + (i % 2 ? 9 : -9) * (1 - i * 0.1), p.y, 9 - i * 0.8, "pink", "violet"); }).flat()]; },
  creeper: () => { const c = stemOf(22, 150, 136, 96, 18); return [stem(c), ...[0.08, 0.3, 0.52, 0.74, 0.94].flatMap((t, i) => { const p = c(t); return [...[-1, 1].flatMap((side) => { const foot = at(p.x, p.y, UP + side * 0.8, 16); return [line([p.x, p.y], foot), ...lobed(...foot, UP + side * 0.8, 26, 6, { open: 2.2, deep: 0.16 })]; }), ...(i % 2 ? leaf(p.x, p.y, UP, 14, 0.36, { kind: "violet", rib: false }) : rootlets(p.x, p.y, 3, 18, `c${i}`))]; })]; },
  lowherb: () => tuft([[38, 92, -8], [80, 62, 5], [124, 88, 8]]).flatMap((c) => { const p = tip(c); return [stem(c), ...pairs(c, 5, 24, 0.4, { from: 0.2, spread: 1, shrink: 0.3, rib: false }), ...rays(p.x, p.y, 8, 5, "white", { eye: "yellow", disc: 0.3, wide: 0.26 })]; }),
  cleavers: () => { const c = upright(26, 12); return [stem(c), ...[0.12, 0.32, 0.52, 0.72, 0.92].flatMap((t, i) => { const p = c(t); return Array.from({ length: 7 }, (_, k) => leaf(p.x, p.y, (k * 2 * Math.PI) / 7 + i, 24 - i * 2, 0.12, { rib: false })).flat(); })]; },
  purse: () => { const c = upright(28, 4); return [stem(c), ...rosette(6, 44, 0.24, { teeth: 4 }, 184), ...Array.from({ length: 6 }, (_, i) => { const p = c(0.42 + i * 0.08); const side = i % 2 ? 1 : -1; const [x, y] = [Math.round(p.x + side * 16), Math.round(p.y - 8)]; return [line([p.x, p.y], [x, y]), { kind: "green", d: `M${x} ${y + 4}L${x - 6} ${y - 7}L${x} ${y - 4}L${x + 6} ${y - 7}Z` }]; }).flat(), ...umbel(82, 32, 4, 8, 3, "white", { fan: 1, each: 1 })]; },
  knotweed: () => { const c = upright(66, 8); return [stem(c), ...pairs(c, 6, 52, 0.14, { turn: true, to: 0.85 }), ...[[60, 44], [84, 30], [106, 50]].flatMap(([x, y]) => [line([81, 92], [x, y + 18]), ...Array.from({ length: 6 }, (_, k) => dot(x + (k % 2 ? 3 : -3), y + 18 - k * 6, 4, "pink"))])]; },
  tormentil: () => { const c = tuft([[44, 66, -6], [80, 44, 4], [118, 70, 6]], 150); return [{ kind: "root", d: "M56 158C56 146 74 148 82 146C96 144 106 150 104 160C102 172 86 168 78 174C70 178 56 172 56 158Z" }, ...rootlets(80, 166, 6, 24, "tor"), ...c.flatMap((one) => { const p = tip(one); return [stem(one), ...[0.4, 0.72].flatMap((t) => { const q = one(t); return [-0.9, -0.3, 0.3, 0.9].flatMap((turn) => leaf(q.x, q.y, q.a + turn, 20, 0.2, { rib: false })); }), ...rays(p.x, p.y, 11, 4, "yellow", { eye: "orange", disc: 0.24, wide: 0.44 })]; })]; },
  bogbean: () => [...[[44, 96, 4.2], [118, 100, 5.2]].flatMap(([x, y, a]) => [line([80, 180], [x, y]), ...trefoil(x, y, a, 44)]), line([80, 180], [82, 36]), ...Array.from({ length: 6 }, (_, i) => fivePetals(82 + (i % 2 ? 9 : -9), 84 - i * 9, 8, "white", "pink")).flat(), ...rootlets(80, 180, 5, 18, "bog")],
  eyebright: () => { const c = upright(40, -5); return [stem(c), ...pairs(c, 7, 22, 0.4, { teeth: 4, spread: 0.95 }), ...[0.6, 0.75, 0.9, 1].flatMap((t, i) => { const p = c(t); return rays(p.x + (i % 2 ? 7 : -7) * (t < 1 ? 1 : 0), p.y - 4, 10, 5, "white", { eye: "yellow", disc: 0.26, wide: 0.32 }); })]; },
  ginseng: () => { const c = upright(96, 2, 138); return [...taproot(80, 136, 58, 18, "gins"), line([78, 160], [58, 194]), stem(c), ...[-1.2, 0, 1.2].flatMap((turn) => { const [x, y] = at(81, 98, UP + turn, 22); return [line([81, 98], [x, y]), ...[-0.8, 0, 0.8].flatMap((more) => leaf(x, y, UP + turn + more, 40, 0.3, { teeth: 5 }))]; }), ...[[76, 86], [84, 84], [80, 78]].map(([x, y]) => dot(x, y, 5, "red"))]; },
  pepper: () => { const c = upright(40, 6); return [stem(c), ...pairs(c, 5, 46, 0.3, { turn: true }), ...[[0.35, 1], [0.55, -1], [0.75, 1]].flatMap(([t, side]) => { const p = c(t); return leaf(p.x + side * 8, p.y + 4, Math.PI / 2 - side * 0.2, 42, 0.15, { kind: "red", rib: false }); })]; },
  fruit: () => { const c = twig(10); return [stem(c), ...pairs(c, 5, 40, 0.32, { turn: true, from: 0.2, to: 0.96, teeth: 6 }), dot(74, 142, 20, "red"), dot(112, 98, 18, "red"), line([66, 118], [74, 126]), line([98, 74], [110, 84])]; },
  mushroom: () => [{ kind: "cream", d: "M68 180C72 150 72 130 70 104L92 104C90 130 90 150 94 180Z" }, { kind: "brown", d: "M24 106C24 66 50 44 80 44C112 44 136 68 136 106C104 116 56 116 24 106Z" }, { kind: "vein", d: "M36 106L72 110M124 106L90 110M60 108L76 112M100 108L86 112" }],
  broadleaf: () => { const c = upright(28, 6); return [stem(c), ...pairs(c, 6, 48, 0.32, { turn: true, from: 0.08, to: 0.9 }), ...leaf(82, 32, UP, 20, 0.3)]; },
  coltsfoot: () => [...[[36, 112, 4], [124, 112, 5.4]].flatMap(([x, y, a]) => [line([80, 178], [x, y]), ...lobed(x, y, a, 56, 6, { open: 2.1, deep: 0.16 })]), ...[[64, 52], [96, 46]].flatMap(([x, y]) => { const c = stemOf(80, 178, x, y, 3); return [stem(c), ...pairs(c, 3, 12, 0.3, { turn: true, from: 0.4, rib: false }), ...rays(x, y, 18, 13, "yellow", { eye: "orange", disc: 0.34, wide: 0.07 })]; }), ...rootlets(80, 178, 5, 18, "colt")],
};

function bramble(kind) {
  const c = twig(16);
  const berry = (x, y) => [[0, 0], [-7, 3], [7, 3], [-4, 9], [4, 9], [0, 14]].map(([u, v]) => dot(x + u, y + v, 5, kind));
  return [stem(c), ...[0.2, 0.5, 0.8].flatMap((t, i) => { const p = c(t); const side = i % 2 ? 1 : -1; const foot = at(p.x, p.y, p.a + side * 0.9, 14); return [line([p.x, p.y], foot), ...[-0.95, 0.95, 0].flatMap((turn) => leaf(...foot, p.a + side * 0.9 + turn, 34, 0.36, { teeth: 6 }))]; }), line([66, 112], [60, 138]), line([104, 66], [118, 84]), ...berry(58, 142), ...berry(122, 90)];
}

function needles(kind) {
  const limbs = [stemOf(34, 186, 124, 36, 12), stemOf(66, 132, 60, 60, -4), stemOf(92, 86, 136, 84, 4)];
  return [...limbs.flatMap((c, i) => [stem(c), ...pairs(c, i ? 7 : 13, 19, 0.1, { from: 0.1, to: 0.98, spread: 0.75, shrink: 0.2, rib: false })]), ...(kind === "dark" ? [[72, 110], [84, 116], [104, 76], [58, 140], [116, 58]].map(([x, y]) => dot(x, y, 7, kind)) : leaf(60, 64, UP, 22, 0.28, { kind, rib: false }))];
}
