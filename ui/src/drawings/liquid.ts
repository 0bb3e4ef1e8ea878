import { f } from "./shape";

/** What a liquid looks like. */
export type Look = "spirit" | "water" | "glycerin" | "vinegar" | "oil" | "honey" | "wine";

const looks: Record<string, Look> = {
  water: "water", spirit: "spirit", glycerin: "glycerin", vinegar: "vinegar", wine: "wine",
  sugar: "honey", syrup: "honey", honey: "honey", juice: "wine", oil: "oil",
};

/** A mixture looks like what it has most of; spirit and water together like spirit. */
export function lookOf(pours: readonly { kind: string; ml: number }[]): Look {
  const most = pours.filter(({ kind }) => kind !== "water").toSorted((one, other) => other.ml - one.ml)[0];
  return looks[most?.kind ?? "water"] ?? "water";
}

/** The grain of a liquid between two heights, so that its kind is not told by its tint alone. */
export function grain(look: Look, r: number, from: number, to: number): string {
  let d = "";
  const rows = (start: number, end: number, step: number, row: (y: number) => string) => {
    for (let y = from + start; y < to - end; y += step) d += row(y);
  };
  if (look === "oil") rows(7, 3, 12, (y) => `M${f(r * 0.45)} ${f(-y)}q4 -3 8 0t8 0`);
  else if (look === "honey") rows(8, 5, 14, (y) => `M${f(r * 0.3)} ${f(-y)}c8 0 10 -6 ${f(r * 0.55)} -6`);
  else if (look === "glycerin") rows(8, 4, 15, (y) => `M${f(r * 0.5)} ${f(-y)}c7 3 11 1 ${f(r * 0.38)} -3`);
  else if (look === "vinegar") rows(6, 3, 8, (y) => `M${f(r * 0.55 + ((y * 7) % 11))} ${f(-y)}h.1M${f(r * 0.75 + ((y * 5) % 9))} ${f(-y + 4)}h.1`);
  else rows(6, 3, 9, (y) => `M${f(r * 0.62)} ${f(-y)}h${f(r * 0.26 - ((y * 3) % 6))}`);
  return d;
}
