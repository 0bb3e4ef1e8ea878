import { f } from "./shape";

/** A half outline from foot to rim: half-width of the body and of the neck, where the shoulder runs, corner of the foot. */
const outlines = {
  squat: { body: 50, neck: 39, shoulder: 58, collar: 74, rim: 82, corner: 9 },
  middle: { body: 50, neck: 36, shoulder: 86, collar: 106, rim: 115, corner: 9 },
  tall: { body: 50, neck: 34, shoulder: 118, collar: 142, rim: 152, corner: 10 },
  phial: { body: 50, neck: 19, shoulder: 92, collar: 122, rim: 142, corner: 8 },
  flask: { body: 50, neck: 15, shoulder: 120, collar: 165, rim: 206, corner: 8 },
} as const;

export type VesselShape = keyof typeof outlines;

export const jarShape = (ml: number): VesselShape => (ml < 250 ? "squat" : ml < 750 ? "middle" : "tall");
export const bottleShape = (ml: number): VesselShape => (ml >= 200 ? "flask" : "phial");

const SLICES = 400;
/** How the shoulder bends: where its two handles lie, as shares of its height. */
const [LEAVES, ARRIVES] = [0.62, 0.5];

function cubic(a: number, b: number, c: number, d: number, t: number): number {
  const u = 1 - t;
  return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
}

export type Vessel = (typeof outlines)[VesselShape] & {
  shape: VesselShape;
  /** Half its width at a height. */
  radius: (height: number) => number;
  /** The height at which so many millilitres stand, for a vessel that is round. */
  level: (ml: number) => number;
  /** The inside as a path, or the outside where it is drawn `grow` wider. */
  path: (grow?: number) => string;
};

export function vessel(shape: VesselShape, capacity_ml: number): Vessel {
  const v = outlines[shape];
  const rise = v.collar - v.shoulder;

  function radius(height: number): number {
    // The corner of the foot as `path` bends it: along it the height grows with the square of the way.
    if (height < v.corner) {
      const t = Math.sqrt(Math.max(0, height) / v.corner);
      return v.body - v.corner + v.corner * (1 - (1 - t) ** 2);
    }
    if (height <= v.shoulder) return v.body;
    if (height >= v.collar) return v.neck;
    let [low, high] = [0, 1];
    for (let i = 0; i < 24; i++) {
      const middle = (low + high) / 2;
      const y = cubic(v.shoulder, v.shoulder + LEAVES * rise, v.collar - ARRIVES * rise, v.collar, middle);
      if (y < height) low = middle;
      else high = middle;
    }
    return cubic(v.body, v.body, v.neck, v.neck, low);
  }

  const below = [0];
  for (let i = 0; i < SLICES; i++) below.push((below[i] ?? 0) + radius(((i + 0.5) * v.rim) / SLICES) ** 2);
  const whole = below[SLICES] ?? 1;

  function level(ml: number): number {
    const wanted = Math.min(1, Math.max(0, ml / capacity_ml)) * whole;
    const above = below.findIndex((sum) => sum >= wanted);
    if (above < 1) return 0;
    const [under, over] = [below[above - 1] ?? 0, below[above] ?? 0];
    return ((above - 1 + (wanted - under) / (over - under)) * v.rim) / SLICES;
  }

  function path(grow = 0): string {
    const [body, neck, corner] = [v.body + grow, v.neck + grow, v.corner + grow];
    const half = (side: 1 | -1) => ({
      foot: f(side * (body - corner)),
      body: f(side * body),
      neck: f(side * neck),
    });
    const [right, left] = [half(1), half(-1)];
    const [leaves, arrives] = [f(-v.shoulder - LEAVES * rise), f(-v.collar + ARRIVES * rise)];
    return [
      `M0 ${f(grow)}H${right.foot}Q${right.body} ${f(grow)} ${right.body} ${f(-v.corner)}V${f(-v.shoulder)}`,
      `C${right.body} ${leaves} ${right.neck} ${arrives} ${right.neck} ${f(-v.collar)}V${f(-v.rim)}H${left.neck}V${f(-v.collar)}`,
      `C${left.neck} ${arrives} ${left.body} ${leaves} ${left.body} ${f(-v.shoulder)}V${f(-v.corner)}Q${left.body} ${f(grow)} ${left.foot} ${f(grow)}Z`,
    ].join("");
  }

  return { ...v, shape, radius, level, path };
}
