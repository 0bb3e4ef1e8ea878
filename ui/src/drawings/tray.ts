import { dice } from "../../drawings/dice.mjs";
import { piece, piecesOf } from "./herb";
import { f, type Shape } from "./shape";

const [WIDE, HIGH, FRAME] = [96, 64, 6];
const MESH = 6;

/** A tray as one looks down on it: the frame, the mesh, and what lies loosely on it. */
export function drawTray(part: string, seed: string): { wide: number; high: number; shapes: Shape[] } {
  const roll = dice(seed);
  const pieces = piecesOf(part);
  let mesh = "";
  for (let x = FRAME + MESH; x < WIDE - FRAME; x += MESH) mesh += `M${x} ${FRAME}V${HIGH - FRAME}`;
  for (let y = FRAME + MESH; y < HIGH - FRAME; y += MESH) mesh += `M${FRAME} ${y}H${WIDE - FRAME}`;
  const shapes: Shape[] = [{ kind: "fine", d: mesh }];
  for (let row = 0; row < 3; row += 1) {
    for (let column = 0; column < 6; column += 1) {
      const [x, y] = [16 + column * 12 + roll() * 4, 18 + row * 13 + roll() * 4];
      const { tone, out, line } = piece(pieces, x, y, roll() * 6.28, 17, roll);
      shapes.push({ kind: `herb${tone}`, d: out });
      if (line) shapes.push({ kind: "vein", d: line });
    }
  }
  const inner = `M${FRAME} ${FRAME}V${HIGH - FRAME}H${WIDE - FRAME}V${FRAME}Z`;
  const corners = [[0, 0], [WIDE, 0], [0, HIGH], [WIDE, HIGH]] as const;
  const joints = corners.map(([x, y]) => `M${x} ${y}L${f(x ? x - FRAME : FRAME)} ${f(y ? y - FRAME : FRAME)}`).join("");
  shapes.push({ kind: "wood", d: `M0 0H${WIDE}V${HIGH}H0Z${inner}` }, { kind: "fine", d: joints });
  return { wide: WIDE, high: HIGH, shapes };
}
