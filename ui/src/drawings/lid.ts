import { f, type Shape } from "./shape";
import type { Vessel } from "./vessel";

export type Lid = "screw" | "cork" | "cloth" | "drop";

/** The lid of a vessel, and how far it reaches above the rim. */
export function lid(v: Vessel, kind: Lid): { shapes: Shape[]; high: number } {
  const [y, n] = [-v.rim, v.neck];
  if (kind === "cloth") {
    const w = n + 12;
    return {
      high: 8,
      shapes: [
        {
          kind: "cloth",
          d: `M${-n - 2} ${f(y + 4)}L${-w} ${f(y + 24)}l7 -3 6 4 7 -4 7 4 7 -4 7 4 ${f(2 * w - 68)} 0 7 -4 7 4 7 -3L${n + 2} ${f(y + 4)}C${n} ${f(y - 10)} ${-n} ${f(y - 10)} ${-n - 2} ${f(y + 4)}Z`,
        },
        { kind: "fine", d: `M${-n - 3} ${f(y + 6)}q${n + 3} 7 ${2 * n + 6} 0M${-n - 3} ${f(y + 9)}q${n + 3} 7 ${2 * n + 6} 0` },
      ],
    };
  }
  if (kind === "cork") {
    const at = (x: number, dy: number, wide: number) => `M${f(n * x)} ${f(y + dy)}h${wide}`;
    return {
      high: 17,
      shapes: [
        { kind: "cork", d: `M${-n + 1} ${f(y + 7)}L${-n - 2} ${f(y - 12)}Q0 ${f(y - 17)} ${n + 2} ${f(y - 12)}L${n - 1} ${f(y + 7)}Z` },
        { kind: "fine", d: at(-0.5, -8, 3) + at(0.2, -4, 4) + at(-0.2, 0, 2) + at(0.5, -10, 2) + at(-0.7, -1, 2) },
      ],
    };
  }
  const k = n + 4;
  if (kind === "drop") {
    return {
      high: 53,
      shapes: [
        { kind: "bulb", d: `M-9 ${f(y - 22)}C-9 ${f(y - 44)} -10 ${f(y - 52)} 0 ${f(y - 53)}C10 ${f(y - 52)} 9 ${f(y - 44)} 9 ${f(y - 22)}Z` },
        {
          kind: "lid",
          d: `M${-k} ${f(y + 2)}V${f(y - 19)}Q${-k} ${f(y - 22)} ${-k + 3} ${f(y - 22)}H${k - 3}Q${k} ${f(y - 22)} ${k} ${f(y - 19)}V${f(y + 2)}Z`,
        },
        { kind: "fine", d: [-0.7, -0.35, 0, 0.35, 0.7].map((t) => `M${f(k * t)} ${f(y - 1)}V${f(y - 18)}`).join("") },
      ],
    };
  }
  const ribs = Array.from({ length: 13 }, (_, i) => `M${f(k * Math.sin(((i + 1) / 14 - 0.5) * Math.PI))} ${f(y + 4)}V${f(y - 8)}`);
  return {
    high: 14,
    shapes: [
      {
        kind: "lid",
        d: `M${-k} ${f(y + 5)}V${f(y - 9)}Q${-k} ${f(y - 14)} ${-k + 5} ${f(y - 14)}H${k - 5}Q${k} ${f(y - 14)} ${k} ${f(y - 9)}V${f(y + 5)}Q0 ${f(y + 11)} ${-k} ${f(y + 5)}Z`,
      },
      { kind: "fine", d: `${ribs.join("")}M${-k} ${f(y - 9)}Q0 ${f(y - 5)} ${k} ${f(y - 9)}` },
    ],
  };
}
