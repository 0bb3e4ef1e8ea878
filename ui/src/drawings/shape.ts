/** A path and what it is, by which the page colours it. */
export type Shape = { kind: string; d: string };

/** A vessel with its foot at 0 and its height above it, in units of its own: up is negative. */
export type Drawn = {
  /** Behind what the vessel holds. */
  behind: Shape[];
  /** The outline of the inside. */
  inside: string;
  /** What it holds, cut off by that outline. */
  held: Shape[];
  before: Shape[];
  /** How far it reaches above its foot, lid and all. */
  high: number;
};

export const f = (n: number) => String(Math.round(n * 10) / 10);

export function circle(x: number, y: number, r: number): string {
  return `M${f(x - r)} ${f(y)}a${f(r)} ${f(r)} 0 1 0 ${f(2 * r)} 0a${f(r)} ${f(r)} 0 1 0 ${f(-2 * r)} 0Z`;
}

export function ellipse(x: number, y: number, rx: number, ry: number): string {
  return `M${f(x - rx)} ${f(y)}a${f(rx)} ${f(ry)} 0 1 0 ${f(2 * rx)} 0a${f(rx)} ${f(ry)} 0 1 0 ${f(-2 * rx)} 0Z`;
}

/** A leaf from its foot, pointing along `angle`; `width` is a share of its length. */
export function leaf(x: number, y: number, angle: number, length: number, width: number): { out: string; mid: string } {
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const at = (along: number, aside: number) =>
    `${f(x + ux * along * length - uy * aside * length)} ${f(y + uy * along * length + ux * aside * length)}`;
  return {
    out: `M${at(0, 0)}C${at(0.25, width)} ${at(0.65, width * 0.9)} ${at(1, 0)}C${at(0.65, -width * 0.9)} ${at(0.25, -width)} ${at(0, 0)}Z`,
    mid: `M${at(0.06, 0)}L${at(0.9, 0)}`,
  };
}
