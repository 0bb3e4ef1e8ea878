/** A plant drawn from its name, for a harvest without a picture: an herb keeps its habit, each specimen its bend. */
export type Sprig = { stems: string[]; shapes: string[]; dots: { x: number; y: number; r: number }[] };

function dice(seed: string): () => number {
  let state = 2166136261;
  for (const letter of seed) state = Math.imul(state ^ letter.charCodeAt(0), 16777619);
  return () => {
    state = Math.imul(state ^ (state >>> 15), 2246822507);
    state = Math.imul(state ^ (state >>> 13), 3266489909);
    return ((state ^= state >>> 16) >>> 0) / 4294967296;
  };
}

const f = (n: number) => n.toFixed(1);

/** A leaf from its foot, pointing along `angle`; `width` is a share of its length. */
function leaf(x: number, y: number, angle: number, length: number, width: number): string {
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const at = (along: number, aside: number) =>
    `${f(x + ux * along * length - uy * aside * length)} ${f(y + uy * along * length + ux * aside * length)}`;
  return `M${at(0, 0)}C${at(0.25, width)} ${at(0.65, width * 0.9)} ${at(1, 0)}C${at(0.65, -width * 0.9)} ${at(0.25, -width)} ${at(0, 0)}Z`;
}

/** The stem as a slow curve: where it is at a share of its height, and how it leans there. */
function stemOf(lean: number, foot: number, top: number) {
  return (share: number) => ({
    x: 40 + lean * Math.sin(share * 2.2),
    y: foot + (top - foot) * share,
    tilt: Math.atan2(top - foot, lean * 2.2 * Math.cos(share * 2.2)),
  });
}

export function grow(seed: string, part: string, specimen: string): Sprig {
  const roll = dice(seed);
  const own = dice(specimen);
  const between = (low: number, high: number) => low + (high - low) * roll();
  const sprig: Sprig = { stems: [], shapes: [], dots: [] };
  const underground = /root|rhizome|bulb/.test(part);
  const fruiting = /berr|fruit|hip|seed|strobile/.test(part);
  const flowering = /flower|top|petal|blossom|spike/.test(part);
  const foot = underground ? 62 : 94;
  const at = stemOf(own() * 20 - 10, foot, flowering || fruiting ? 20 : 12);
  const steps = Array.from({ length: 13 }, (_, i) => at(i / 12));
  sprig.stems.push(`M${steps.map(({ x, y }) => `${f(x)} ${f(y)}`).join("L")}`);

  const pairs = Math.round(between(4, 7));
  const width = between(0.12, 0.34);
  const opposite = roll() > 0.4;
  for (let i = 0; i < pairs; i++) {
    const share = 0.1 + (0.82 * (i + 0.3)) / pairs;
    const length = between(20, 25) * (1 - share * 0.62);
    for (const side of [-1, 1]) {
      const { x, y, tilt } = at(opposite ? share : share + (side * 0.25) / pairs);
      sprig.shapes.push(leaf(x, y, tilt + side * (0.7 + own() * 0.4), length * (0.9 + own() * 0.2), width));
    }
  }
  const tip = at(1);
  if (underground) roots(sprig, roll, foot);
  else if (fruiting) berries(sprig, roll, tip.x, tip.y);
  else if (flowering) blossom(sprig, roll, tip.x, tip.y);
  else sprig.shapes.push(leaf(tip.x, tip.y + 4, tip.tilt, 14, width));
  return sprig;
}

function roots(sprig: Sprig, roll: () => number, foot: number): void {
  sprig.shapes.push(leaf(40, foot - 2, Math.PI / 2, 34, 0.13));
  for (let i = 0; i < 7; i++) {
    const y = foot + 3 + i * 3.4;
    const reach = (i % 2 ? 1 : -1) * (17 - i * 1.6) * (0.7 + roll() * 0.5);
    sprig.stems.push(`M40 ${f(y)}q${f(reach * 0.6)} 1 ${f(reach)} ${f(6 + roll() * 6)}`);
  }
}

function berries(sprig: Sprig, roll: () => number, x: number, y: number): void {
  for (let i = 0; i < 9; i++) {
    const angle = -Math.PI * (0.08 + (0.84 * i) / 8);
    const reach = 9 + roll() * 8;
    const [bx, by] = [x + Math.cos(angle) * reach, y + Math.sin(angle) * reach * 0.8];
    sprig.stems.push(`M${f(x)} ${f(y)}Q${f(x)} ${f(by)} ${f(bx)} ${f(by)}`);
    sprig.dots.push({ x: bx, y: by, r: 2 + roll() * 1.1 });
  }
}

function blossom(sprig: Sprig, roll: () => number, x: number, y: number): void {
  if (roll() > 0.5) {
    const petals = 9 + Math.round(roll() * 5);
    for (let i = 0; i < petals; i++) sprig.shapes.push(leaf(x, y, (i * 2 * Math.PI) / petals, 12, 0.2));
    sprig.dots.push({ x, y, r: 4 });
    return;
  }
  for (let i = 0; i < 8; i++) {
    const size = 6.5 - i * 0.55;
    for (const side of [-1, 1]) sprig.shapes.push(leaf(x, y + 14 - i * 3.6, -Math.PI / 2 + side * 0.9, size, 0.34));
  }
}
