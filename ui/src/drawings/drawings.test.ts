import { describe, expect, it } from "vitest";
import { drawBottle } from "./bottle";
import { drawJar, type JarFigures } from "./jar";
import { drawingOf, drawings, plantOf, rows, stance } from "./plants";
import { vessel, type VesselShape } from "./vessel";

/** The half-widths of a drawn outline from its foot to its rim, read off the path itself and not off what made it. */
function outlineOf(path: string): { x: number; y: number }[] {
  const points: { x: number; y: number }[] = [];
  let [x, y] = [0, 0];
  for (const [, letter = "", rest = ""] of path.matchAll(/([MHVQC])([^MHVQCZ]*)/g)) {
    const n = rest.trim().split(/[ ,]+/).map(Number);
    const from = { x, y };
    const line = (toX: number, toY: number) => [from, { x: toX, y: toY }];
    const poles =
      letter === "H" ? line(n[0]!, y)
      : letter === "V" ? line(x, n[0]!)
      : letter === "M" ? line(n[0]!, n[1]!)
      : [from, ...Array.from({ length: n.length / 2 }, (_, i) => ({ x: n[2 * i]!, y: n[2 * i + 1]! }))];
    for (let i = 0; i <= 60; i++) points.push(casteljau(poles, i / 60));
    ({ x, y } = poles.at(-1)!);
    if (letter === "H" && x < 0) break;
  }
  return points.filter((point) => point.x >= 0);
}
function casteljau(poles: { x: number; y: number }[], t: number): { x: number; y: number } {
  if (poles.length === 1) return poles[0]!;
  const between = poles.slice(1).map((pole, i) => ({ x: poles[i]!.x + (pole.x - poles[i]!.x) * t, y: poles[i]!.y + (pole.y - poles[i]!.y) * t }));
  return casteljau(between, t);
}
/** The volume below a height of the drawn outline turned about its middle, as a share of all of it. */
function shareBelow(path: string, height: number): number {
  const points = outlineOf(path);
  const upTo = (limit: number) => {
    let all = 0;
    for (let i = 1; i < points.length; i++) {
      const [one, other] = [points[i - 1]!, points[i]!];
      const [low, high] = [Math.min(-one.y, limit), Math.min(-other.y, limit)];
      if (high > low) all += ((one.x + other.x) / 2) ** 2 * (high - low);
    }
    return all;
  };
  return upTo(height) / upTo(1000);
}

const leaf = { part: "leaf", state: "dried", mass_g: 50, moisture_wet_percent: { value: 10 } };
const fresh = { part: "leaf", state: "fresh", mass_g: 80, moisture_wet_percent: { value: 75 } };
function jarOf(change: Partial<JarFigures> = {}): JarFigures {
  return { jar_ml: 500, pours: [{ kind: "spirit", ml: 150 }, { kind: "water", ml: 100 }], plants: [leaf], seed: "kepa-183", ...change };
}

describe("a drawn level holds the volume it says", () => {
  const shapes: [VesselShape, number][] = [["squat", 200], ["middle", 500], ["tall", 1000], ["phial", 50], ["flask", 250]];
  for (const [shape, capacity] of shapes) {
    it(`in a ${shape} vessel, within 2 % of what it holds`, () => {
      const v = vessel(shape, capacity);
      for (let share = 0.02; share <= 1; share += 0.02) {
        expect(Math.abs(shareBelow(v.path(), v.level(share * capacity)) - share)).toBeLessThan(0.02);
      }
    });
  }
  it("in a jar: what was poured, and with the plant's own water", () => {
    for (const poured of [40, 120, 250, 330]) {
      const jar = drawJar(jarOf({ pours: [{ kind: "spirit", ml: poured }], plants: [fresh] }));
      const body = 80 * 0.25 * 0.7;
      expect(Math.abs(shareBelow(jar.inside, jar.poured) * 500 - poured - body)).toBeLessThan(0.02 * 500);
      expect(Math.abs(shareBelow(jar.inside, jar.full) * 500 - poured - body - 60)).toBeLessThan(0.02 * 500);
    }
  });
  it("in a bottle", () => {
    for (const left of [5, 20, 32, 50]) {
      const bottle = drawBottle({ size_ml: 50, left_ml: left });
      expect(Math.abs(shareBelow(bottle.inside, bottle.full) * 54 - left)).toBeLessThan(0.02 * 54);
    }
  });
  it("never above the rim, however much is poured", () => {
    const jar = drawJar(jarOf({ jar_ml: 100 }));
    expect(jar.full).toBeCloseTo(jar.vessel.rim);
  });
});

describe("a drawing follows from its numbers", () => {
  it("the same for the same lot, and another for another", () => {
    for (const size of ["plate", "shelf", "mark"] as const) {
      expect(JSON.stringify(drawJar(jarOf(), size))).toBe(JSON.stringify(drawJar(jarOf(), size)));
    }
    expect(drawJar(jarOf({ seed: "tuva-318" })).held).not.toEqual(drawJar(jarOf()).held);
    expect(plantOf("peppermint", "leaf")).toEqual(plantOf("peppermint", "leaf"));
    expect(stance("kepa-183")).toBe(stance("kepa-183"));
    expect(stance("kepa-183")).not.toBe(stance("tuva-318"));
  });
  it("hatches the plant's own water where there is some, and only there", () => {
    const hatched = (jar: JarFigures) => drawJar(jar).held.some(({ kind }) => kind === "own-water");
    expect(hatched(jarOf({ plants: [fresh] }))).toBe(true);
    expect(hatched(jarOf({ plants: [{ ...fresh, moisture_wet_percent: { value: 0 } }] }))).toBe(false);
  });
  it("takes its tint from what it has most of, and spirit with water for spirit", () => {
    expect(drawJar(jarOf({ pours: [{ kind: "water", ml: 150 }, { kind: "spirit", ml: 90 }] })).look).toBe("spirit");
    expect(drawJar(jarOf({ pours: [{ kind: "honey", ml: 150 }, { kind: "vinegar", ml: 190 }] })).look).toBe("vinegar");
  });
  it("draws no liquid where none is", () => {
    const kinds = (shapes: { kind: string }[]) => shapes.map(({ kind }) => kind);
    expect(kinds(drawJar(jarOf({ pours: [] })).held)).not.toContain("liquid");
    expect(kinds(drawBottle({ size_ml: 50, left_ml: 0 }).held)).not.toContain("liquid");
  });
  it("finds room for what is in a jar whose size is not known", () => {
    const jar = drawJar(jarOf({ jar_ml: null }));
    expect(jar.full).toBeLessThan(jar.vessel.rim * 0.95);
    expect(jar.full).toBeGreaterThan(jar.vessel.rim * 0.6);
  });
  it("stays small: a plate is at most 24 kB, a jar on the shelf 12 kB, a mark 2 kB", () => {
    const bytes = (size: "plate" | "shelf" | "mark") => {
      const jar = drawJar(jarOf(), size);
      return [...jar.behind, ...jar.held, ...jar.before].reduce((all, { d }) => all + d.length, jar.inside.length);
    };
    expect(bytes("plate")).toBeLessThan(24_000);
    expect(bytes("shelf")).toBeLessThan(12_000);
    expect(bytes("mark")).toBeLessThan(2_000);
  });
});

describe("a plant", () => {
  /** The herbs that are grown and gathered most (common practice, no source). */
  const common =
    "peppermint lemon-balm sage thyme rosemary lavender calendula chamomile yarrow echinacea dandelion plantain nettle elder-flower elder-berry hawthorn rose lime-flower st-johns-wort mullein valerian fennel garlic ginger comfrey marshmallow raspberry hops meadowsweet red-clover".split(" ");
  it("of the thirty most common herbs is drawn like no other of them", () => {
    expect(common).toHaveLength(30);
    expect(new Set(common.map((herb) => drawingOf(herb, "any"))).size).toBe(30);
    expect(new Set(common.map((herb) => JSON.stringify(plantOf(herb, "any")))).size).toBe(30);
  });
  it("is drawn for every row of the table, and no drawing is without a row", () => {
    const used = new Set(rows.values());
    for (const name of used) expect(drawings.get(name)?.length, name).toBeGreaterThan(0);
    for (const name of drawings.keys()) expect(used.has(name), name).toBe(true);
  });
  it("shows the fruit where the fruit is picked", () => {
    expect(drawingOf("rose", "hip")).not.toBe(drawingOf("rose", "petal"));
    expect(drawingOf("hawthorn", "berry")).not.toBe(drawingOf("hawthorn", "flower"));
  });
  it("of one's own is drawn by what is picked of it", () => {
    const own = "01a22b46-f0e4-72cc-9e82-79c6a3455b2e";
    for (const part of ["root", "berry", "flower", "leaf", "Blatt"]) expect(plantOf(own, part).length, part).toBeGreaterThan(0);
    expect(drawingOf(own, "root")).toBe(drawingOf(own, "rhizome"));
    expect(drawingOf(own, "root")).not.toBe(drawingOf(own, "leaf"));
  });
  it("stays in its box, and all of them stay below 150 kB", () => {
    let bytes = 0;
    for (const [name, paths] of drawings) {
      for (const { kind, d } of paths) {
        bytes += d.length + kind.length;
        for (const [, x = "", y = ""] of d.matchAll(/M(-?\d+)[ ]?(-?\d+)/g)) {
          expect(Number(x), `${name}: ${d}`).toBeGreaterThanOrEqual(0);
          expect(Number(x), name).toBeLessThanOrEqual(160);
          expect(Number(y), name).toBeGreaterThanOrEqual(0);
          expect(Number(y), name).toBeLessThanOrEqual(200);
        }
      }
    }
    expect(bytes).toBeLessThan(150_000);
  });
});
