import { lid } from "./lid";
import type { Look } from "./liquid";
import { ellipse, f, type Drawn, type Shape } from "./shape";
import { bottleShape, vessel, type Vessel } from "./vessel";
import type { Size } from "./jar";

export type BottleFigures = { size_ml: number; left_ml: number };
export type BottleDrawn = Drawn & { vessel: Vessel; full: number };

/** A bottle is filled to below its rim; so much larger is it than what it is sold as. */
const SPARE = 1.08;
const GLASS = 2.6;

export function drawBottle({ size_ml, left_ml }: BottleFigures, size: Size = "shelf", look: Look = "spirit"): BottleDrawn {
  const shape = bottleShape(size_ml);
  const v = vessel(shape, size_ml * SPARE);
  const full = v.level(left_ml);
  const cap = lid(v, shape === "flask" || look === "oil" ? "cork" : "drop");
  const wash = `M-60 6V${f(-full)}H60V6Z`;
  const wide = v.radius(full);
  const held: Shape[] = left_ml > 0 ? [{ kind: "liquid", d: wash }] : [];
  if (shape === "phial" && look !== "oil") held.push({ kind: "pipette", d: `M-4 ${f(-v.rim)}V-22L-1.5 -14H1.5L4 -22V${f(-v.rim)}Z` });
  if (left_ml > 0) held.push({ kind: "wash", d: wash });
  const before: Shape[] = left_ml > 0 ? [{ kind: "top", d: ellipse(0, -full, wide, wide * 0.1) }] : [];
  before.push({ kind: "outline", d: v.path(GLASS) });
  if (size !== "mark") {
    // The label lies under the level that is to be read.
    const [top, foot] = [v.shoulder * 0.42, v.shoulder * 0.1];
    const half = v.body + GLASS;
    before.push(
      { kind: "fine", d: v.path() },
      { kind: "gum", d: `M${-half} ${f(-top)}H${half}V${f(-foot)}H${-half}Z` },
      { kind: "written", d: `M-36 ${f(-top + 9)}H36M-36 ${f(-top + 17)}H14` },
      { kind: "shine", d: `M${f(-v.body * 0.78)} ${f(-v.shoulder * 0.55)}V${f(-v.shoulder * 0.94)}` },
    );
  }
  before.push(...cap.shapes);
  return {
    behind: [{ kind: "shade", d: ellipse(4, 5, v.body + 5, 6) }, { kind: "back", d: v.path(GLASS) }, { kind: "glass", d: v.path(GLASS) }],
    inside: v.path(), held, before, high: v.rim + cap.high, vessel: v, full,
  };
}
