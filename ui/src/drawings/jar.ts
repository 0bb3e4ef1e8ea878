import { bulkOf, heap, piecesOf, toneOf, type Pieces, type Tone } from "./herb";
import { lid, type Lid } from "./lid";
import { grain, lookOf, type Look } from "./liquid";
import { ellipse, f, type Drawn, type Shape } from "./shape";
import { jarShape, vessel, type Vessel } from "./vessel";

/** A plate tells everything, a shelf what is known from afar, a mark only the vessel and its level. */
export type Size = "plate" | "shelf" | "mark";

export type JarPlant = { part: string; state: string; mass_g: number; moisture_wet_percent: { value: number } };
export type JarFigures = {
  /** What it holds; a jar of which that is not known is drawn as one that just holds what is in it. */
  jar_ml: number | null;
  /** What was poured, or what stands in it now. */
  pours: readonly { kind: string; ml: number }[];
  plants: readonly JarPlant[];
  /** Same seed, same picture: the lot. */
  seed: string;
};
export type JarDrawn = Drawn & {
  look: Look;
  tone: Tone;
  vessel: Vessel;
  capacity_ml: number;
  /** Heights: of what was poured, of that with the plant's own water, and of the heap. */
  poured: number;
  full: number;
  bulk: number;
};

/** Room that a gram of the plant without its water takes in the liquid, in mL: a figure for the drawing, by eye. */
const BODY_ML_PER_G = 0.7;
/** Of a jar whose size is not known, how much is full. */
const FILLED = 0.84;
const GLASS = 2.6;

const sum = (numbers: number[]) => numbers.reduce((all, one) => all + one, 0);
const waterIn = (plant: JarPlant) => (plant.mass_g * plant.moisture_wet_percent.value) / 100;

export function drawJar({ jar_ml, pours, plants, seed }: JarFigures, size: Size = "plate"): JarDrawn {
  const poured_ml = sum(pours.map(({ ml }) => ml));
  const water_ml = sum(plants.map(waterIn));
  const body_ml = sum(plants.map((plant) => plant.mass_g - waterIn(plant))) * BODY_ML_PER_G;
  const main = plants.toSorted((one, other) => other.mass_g - one.mass_g)[0];
  const pieces: Pieces = piecesOf(main?.part ?? "leaf");
  const heap_ml = sum(plants.map((plant) => bulkOf(piecesOf(plant.part), plant.mass_g, plant.state === "fresh")));
  const needed_ml = poured_ml + body_ml + water_ml;
  const capacity_ml = Math.max(jar_ml ?? Math.max(needed_ml / FILLED, 1), 1);

  const v = vessel(jarShape(capacity_ml), capacity_ml);
  const poured = v.level(poured_ml + body_ml);
  const full = v.level(needed_ml);
  const bulk = plants.length > 0 ? v.level(Math.min(capacity_ml * 0.97, heap_ml)) : 0;
  const look = lookOf(pours);
  const cover: Lid = look === "vinegar" ? "cork" : look === "oil" && plants.some(({ state }) => state === "fresh") ? "cloth" : "screw";
  const cap = lid(v, cover);
  const wide = v.radius(full);
  const outside = v.path(GLASS);
  const inside = v.path();
  const wash = `M-60 6V${f(-full)}H60V6Z`;
  const seen = size !== "mark";
  const wet = poured_ml > 0;

  const held: Shape[] = wet ? [{ kind: "liquid", d: wash }] : [];
  if (seen && bulk > 0) held.push(...heap(v, pieces, bulk, size === "plate" ? 24 : 30, seed));
  if (wet) held.push({ kind: "wash", d: wash });
  if (seen && full - poured > 0.6) {
    let hatch = "";
    for (let x = -64; x < 60; x += 4.2) hatch += `M${f(x)} ${f(-poured)}L${f(x + (full - poured))} ${f(-full)}`;
    held.push({ kind: "own-water", d: hatch }, { kind: "fine dash", d: `M${f(-v.radius(poured))} ${f(-poured)}H${f(v.radius(poured))}` });
  }
  if (size === "plate" && wet) held.push({ kind: "grain", d: grain(look, v.body, bulk * 0.15, full) });

  const before: Shape[] = wet ? [{ kind: "top", d: ellipse(0, -full, wide, wide * 0.085) }] : [];
  before.push({ kind: "outline", d: outside });
  if (seen) {
    const shine = `M${f(-v.body * 0.8)} ${f(-v.shoulder * 0.16)}V${f(-v.shoulder * 0.86)}M${f(-v.body * 0.66)} ${f(-v.shoulder * 0.5)}V${f(-v.shoulder * 0.93)}`;
    before.push({ kind: "fine", d: inside }, { kind: "shine", d: shine });
  }
  before.push(...cap.shapes);
  return {
    behind: [{ kind: "shade", d: ellipse(4, 5, v.body + 6, 6) }, { kind: "glass", d: outside }],
    inside, held, before,
    high: v.rim + cap.high,
    look, tone: toneOf[pieces], vessel: v, capacity_ml, poured, full, bulk,
  };
}
