// The parts that plants are put together from. Angles in radians, up is -PI / 2; lengths in units of the box.

import { dice } from "./dice.mjs";

export const UP = -Math.PI / 2;
const r = Math.round;
const P = ([x, y]) => `${r(x)} ${r(y)}`;
const at = (x, y, angle, long, aside = 0) => [x + Math.cos(angle) * long - Math.sin(angle) * aside, y + Math.sin(angle) * long + Math.cos(angle) * aside];

/** A stem as a slow curve: place and lean at a share of its height. */
export function stemOf(x0, y0, x1, y1, sway = 0) {
  return (t) => {
    const dx = x1 - x0 + sway * Math.PI * Math.cos(t * Math.PI);
    return { x: x0 + (x1 - x0) * t + sway * Math.sin(t * Math.PI), y: y0 + (y1 - y0) * t, a: Math.atan2(y1 - y0, dx) };
  };
}
export function stem(curve, to = 1) {
  const points = Array.from({ length: 4 }, (_, i) => curve((i / 3) * to)).map(({ x, y }) => P([x, y]));
  return { kind: "stem", d: `M${points.join("L")}` };
}
export const line = (...points) => ({ kind: "stem", d: `M${points.map(P).join("L")}` });

/** A leaf from its foot along an angle, `wide` a share of its length; with teeth its edge is sawn. */
export function leaf(x, y, angle, long, wide, { teeth = 0, kind = "leaf", rib = true } = {}) {
  const foot = [x, y];
  const tip = at(x, y, angle, long);
  let d;
  if (teeth === 0) {
    const c = (u, v) => P(at(x, y, angle, long * u, long * v));
    d = `M${P(foot)}C${c(0.25, wide)} ${c(0.65, wide * 0.9)} ${P(tip)}C${c(0.65, -wide * 0.9)} ${c(0.25, -wide)} ${P(foot)}Z`;
  } else {
    const half = (t) => long * wide * 0.78 * Math.sin(Math.PI * t ** 0.75);
    const edge = (side) =>
      Array.from({ length: teeth }, (_, i) => {
        const [out, back] = [(i + 0.9) / (teeth + 0.4), (i + 1) / (teeth + 0.4)];
        return [P(at(x, y, angle, long * out, side * half(out - 0.05) * 1.06)), P(at(x, y, angle, long * back, side * half(back) * 0.84))];
      });
    d = `M${P(foot)}L${edge(1).flat().join("L")}L${P(tip)}L${edge(-1).reverse().flatMap((tooth) => tooth.reverse()).join("L")}Z`;
  }
  return rib && long > 30 ? [{ kind, d }, { kind: "vein", d: `M${P(at(x, y, angle, long * 0.08))}L${P(at(x, y, angle, long * 0.82))}` }] : [{ kind, d }];
}

/** Leaves in pairs up a stem; the upper ones are smaller. `turn` sets them one by one. */
export function pairs(curve, count, long, wide, { from = 0.1, to = 0.88, spread = 0.85, turn = false, shrink = 0.55, ...more } = {}) {
  const found = [];
  for (let i = 0; i < count; i++) {
    const t = from + ((to - from) * i) / Math.max(1, count - 1);
    for (const side of [-1, 1]) {
      if (turn && (i % 2 ? 1 : -1) !== side) continue;
      const { x, y, a } = curve(t);
      found.push(...leaf(x, y, a + side * spread, long * (1 - (shrink * i) / count), wide, more));
    }
  }
  return found;
}

/** A leaf of leaflets along a rib. */
export function pinnate(x, y, angle, long, leaflets, size, wide, more = {}) {
  const found = [line([x, y], at(x, y, angle, long * 0.9))];
  for (let i = 0; i < leaflets; i++) {
    const foot = at(x, y, angle, long * (0.3 + (0.6 * i) / leaflets));
    for (const side of [-1, 1]) found.push(...leaf(...foot, angle + side * 0.95, size * (1 - 0.08 * i), wide, { rib: false, ...more }));
  }
  found.push(...leaf(...at(x, y, angle, long * 0.86), angle, size * 1.1, wide, { rib: false, ...more }));
  return found;
}

/** A leaf so finely cut that only strokes are left of it. */
export function feather(x, y, angle, long, count, size) {
  let d = `M${P([x, y])}L${P(at(x, y, angle, long))}`;
  for (let i = 1; i <= count; i++) {
    const foot = at(x, y, angle, (long * i) / (count + 0.6));
    const reach = size * Math.sin((Math.PI * (i + 0.6)) / (count + 1.6)) + 2;
    for (const side of [-1, 1]) d += `M${P(foot)}L${P(at(...foot, angle + side * 0.85, reach))}`;
  }
  return [{ kind: "feather", d }];
}

/** A leaf of lobes around its foot. */
export function lobed(x, y, angle, size, lobes, { deep = 0.45, open = 2.2, kind = "leaf" } = {}) {
  const middle = at(x, y, angle, size * 0.55);
  const count = lobes * 2;
  const points = Array.from({ length: count + 1 }, (_, i) => {
    const turn = angle + (i / count - 0.5) * 2 * open;
    return P(at(...middle, turn, size * (i % 2 ? 0.62 : 0.62 * (1 - deep) + 0.02)));
  });
  const ribs = Array.from({ length: lobes }, (_, i) => `M${P([x, y])}L${P(at(...middle, angle + ((i * 2 + 1) / count - 0.5) * 2 * open, size * 0.4))}`);
  return [{ kind, d: `M${P([x, y])}L${points.join("L")}Z` }, { kind: "vein", d: ribs.join("") }];
}

/** A round, of two half circles. */
export function dot(x, y, radius, kind) {
  const n = r(radius);
  return { kind, d: `M${r(x) - n} ${r(y)}a${n} ${n} 0 1 0 ${2 * n} 0a${n} ${n} 0 1 0 ${-2 * n} 0Z` };
}

/** A head of rays around an eye; `flat` below 1 shows it from the side. */
export function rays(x, y, radius, count, kind, { eye = "brown", disc = 0.34, wide = 0.14, flat = 1 } = {}) {
  const found = [];
  for (let i = 0; i < count; i++) {
    const a = (i * 2 * Math.PI) / count + 0.2;
    const long = radius * Math.hypot(Math.cos(a), Math.sin(a) * flat);
    found.push(...leaf(x, y, Math.atan2(Math.sin(a) * flat, Math.cos(a)), long, (wide * radius) / long, { kind, rib: false }));
  }
  return [...found, dot(x, y, radius * disc, eye)];
}

/** A spike of small flowers, broad at its foot. */
export function spike(x, y, high, broad, rows, kind) {
  const found = [];
  for (let i = 0; i < rows; i++) {
    const half = broad * (1 - (0.75 * i) / rows);
    const row = y - (high * i) / rows;
    for (const side of [-1, 1]) found.push(...leaf(x, row, UP + side * 0.95, half + 3, 0.3, { kind, rib: false }));
  }
  return [...found, ...leaf(x, y - high, UP, broad * 0.6 + 3, 0.3, { kind, rib: false })];
}

/** Small flowers or fruits at the ends of rays from one point, as in an umbel; `dome` bends them down. */
export function umbel(x, y, count, reach, size, kind, { fan = 1.1, each = 3, dome = 0.25, seed = kind } = {}) {
  const roll = dice(seed);
  const found = [];
  const dots = [];
  for (let i = 0; i < count; i++) {
    const turn = (i / (count - 1) - 0.5) * 2 * fan;
    const end = at(x, y, UP + turn, reach * (1 - dome * turn * turn));
    found.push(line([x, y], end));
    for (let k = 0; k < each; k++) dots.push(dot(end[0] + (k - (each - 1) / 2) * size * 1.5, end[1] - (k % 2) * size - roll() * 2, size, kind));
  }
  return [...found, ...dots];
}

/** A panicle: small flowers crowded on side branches that shorten upwards. */
export function panicle(curve, from, rows, reach, size, kind) {
  const found = [];
  for (let i = 0; i < rows; i++) {
    const { x, y, a } = curve(from + ((1 - from) * i) / rows);
    const long = reach * (1 - (0.8 * i) / rows);
    for (const side of [-1, 1]) {
      const turn = a + side * 0.9;
      found.push(line([x, y], at(x, y, turn, long)));
      for (let k = 1; k <= 3; k++) found.push(dot(...at(x, y, turn, (long * k) / 3, (k % 2) * 2), size, kind));
    }
  }
  const tip = curve(1);
  return [...found, dot(tip.x, tip.y, size, kind)];
}

/** A tap root, or with `many` a tuft of rootlets. */
export function taproot(x, y, long, broad, seed) {
  const roll = dice(seed);
  const half = broad / 2;
  const found = [{ kind: "root", d: `M${P([x - half, y])}C${P([x - half, y + long * 0.4])} ${P([x - half * 0.4, y + long * 0.8])} ${P([x, y + long])}C${P([x + half * 0.4, y + long * 0.8])} ${P([x + half, y + long * 0.4])} ${P([x + half, y])}Z` }];
  for (let i = 0; i < 5; i++) {
    const side = i % 2 ? 1 : -1;
    const from = y + long * (0.25 + 0.13 * i);
    found.push(line([x + side * half * 0.4, from], [x + side * (10 + roll() * 8), from + 6 + roll() * 6]));
  }
  return found;
}
export function rootlets(x, y, count, long, seed) {
  const roll = dice(seed);
  return Array.from({ length: count }, (_, i) => {
    const turn = Math.PI / 2 + (i / (count - 1) - 0.5) * 2;
    const reach = long * (0.7 + roll() * 0.4);
    const [a, b] = [at(x, y, turn, reach * 0.5, roll() * 6 - 3), at(x, y, turn, reach)];
    return { kind: "rootlet", d: `M${P([x, y])}C${P(at(x, y, turn, reach * 0.25))} ${P(a)} ${P(b)}` };
  });
}
export { at };
