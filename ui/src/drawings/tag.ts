import { circle, f } from "./shape";
import type { Vessel } from "./vessel";

const RADIUS = 25;
const RING = RADIUS - 4;

/** A paper disc on a thread at the neck: a ring for the part of the days that are gone. */
export function dayTag(v: Vessel, { day, of }: { day: number; of: number }) {
  const [x, y] = [v.body * 0.62, -v.shoulder * 0.52];
  const share = Math.min(1, Math.max(0, day / Math.max(of, 1)));
  const angle = -Math.PI / 2 + share * 2 * Math.PI;
  const end = `${f(RING * Math.cos(angle))} ${f(RING * Math.sin(angle))}`;
  return {
    x, y,
    thread: `M${f(-v.neck)} ${f(-v.collar - 2)}Q${f(x * 0.6)} ${f(-v.collar + 4)} ${f(x)} ${f(y - RADIUS + 5)}`,
    disc: circle(0, 0, RADIUS),
    track: circle(0, 0, RING),
    gone: share >= 1 ? circle(0, 0, RING) : share > 0 ? `M0 ${-RING}A${RING} ${RING} 0 ${share > 0.5 ? 1 : 0} 1 ${end}` : "",
    tick: "M-9 0.5 -2.5 7 9.5 -6",
  };
}
