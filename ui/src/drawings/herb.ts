import { dice } from "../../drawings/dice.mjs";
import { circle, f, leaf, type Shape } from "./shape";
import type { Vessel } from "./vessel";

/** How the herb looks once it is cut: the pieces it falls into. */
export type Pieces = "leaf" | "petal" | "berry" | "root" | "needle";
export type Tone = "green" | "gold" | "dark" | "root";

export function piecesOf(part: string): Pieces {
  if (/root|rhizome|bulb|bark|tuber|stem|stalk|scape/.test(part)) return "root";
  if (/berr|fruit|hip|seed|cone|strobile/.test(part)) return "berry";
  if (/^(flower|petal|calyx|flowering spike)$/.test(part)) return "petal";
  return "leaf";
}
export const toneOf: Record<Pieces, Tone> = { leaf: "green", needle: "green", petal: "gold", berry: "dark", root: "root" };

/** Room that a gram takes in the jar, in mL, for a heap to be drawn by eye; no sum of the book is made of it. */
const bulk: Record<Pieces, number> = { leaf: 4.6, petal: 7, berry: 1.7, root: 2.2, needle: 4.4 };
/** Fresh herb lies closer for its weight, for most of it is water. */
const FRESH = 0.42;

export function bulkOf(pieces: Pieces, grams: number, fresh: boolean): number {
  return grams * bulk[pieces] * (fresh ? FRESH : 1);
}

type Roll = () => number;
type Piece = { tone: 1 | 2 | 3; out: string; line: string };

export function piece(pieces: Pieces, x: number, y: number, angle: number, size: number, roll: Roll): Piece {
  const tone = (1 + Math.floor(roll() * 3)) as 1 | 2 | 3;
  if (pieces === "berry") {
    const r = size * (0.2 + roll() * 0.06);
    return { tone, out: circle(x, y, r), line: `M${f(x - r * 0.5)} ${f(y - r * 0.35)}q${f(r * 0.25)} ${f(-r * 0.4)} ${f(r * 0.7)} ${f(-r * 0.25)}` };
  }
  if (pieces === "root") {
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const [long, wide] = [size * (0.32 + roll() * 0.2), size * (0.16 + roll() * 0.08)];
    const corners = ([[-1, -1], [0.8, -1.1], [1, 0.9], [-0.9, 0.9]] as const).map(
      ([u, v]) => `${f(x + u * long * c - v * wide * s)} ${f(y + u * long * s + v * wide * c)}`,
    );
    return { tone, out: `M${corners.join("L")}Z`, line: `M${corners[0]}L${corners[2]}` };
  }
  if (pieces === "petal") return { tone, out: leaf(x, y, angle, size * 0.72, 0.16).out, line: "" };
  if (pieces === "needle") return { tone, out: leaf(x, y, angle, size * 0.75, 0.07).out, line: "" };
  const { out, mid } = leaf(x, y, angle, size * (0.75 + roll() * 0.4), 0.22 + roll() * 0.12);
  return { tone, out, line: mid };
}

/** A heap up to `top`, row on row from the foot; of one row all pieces of a tone are one path, so that many cost little. */
export function heap(v: Vessel, pieces: Pieces, top: number, size: number, seed: string): Shape[] {
  const roll = dice(seed);
  const shapes: Shape[] = [];
  const step = size * (pieces === "berry" ? 0.36 : pieces === "needle" ? 0.3 : 0.42);
  const lay = (row: Piece[]) => {
    for (const tone of [1, 2, 3] as const) {
      const d = row.filter((one) => one.tone === tone).map(({ out }) => out).join("");
      if (d) shapes.push({ kind: `herb${tone}`, d });
    }
    const lines = row.map(({ line }) => line).join("");
    if (lines) shapes.push({ kind: "vein", d: lines });
  };
  for (let y = 2; y < top + step * 0.4; y += step * 0.78) {
    const row: Piece[] = [];
    const r = v.radius(Math.min(y, v.rim)) + size * 0.1;
    for (let x = -r + roll() * step; x < r; x += step) {
      const sinks = y > top - step ? roll() * step * 0.5 : 0;
      const [px, py] = [x + (roll() - 0.5) * step * 0.8, y + (roll() - 0.5) * step * 0.7 - sinks];
      row.push(piece(pieces, px, -py, (roll() - 0.5) * 2.1 + (roll() < 0.5 ? Math.PI : 0), size, roll));
    }
    lay(row);
  }
  return shapes;
}
