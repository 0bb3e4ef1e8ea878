import sheet from "../../drawings/plants.svg?raw";
import table from "../../drawings/plants.tsv?raw";
import { dice } from "../../drawings/dice.mjs";

/** One stroke or surface of a plant, in a box of 160 by 200; its kind names what it is. */
export type PlantPath = { kind: string; d: string };

const symbols = new Map(
  [...sheet.matchAll(/<symbol id="(\w+)"[^>]*>([^]*?)<\/symbol>/g)].map(([, name = "", body = ""]) => [
    name,
    [...body.matchAll(/<path class="(\w+)" d="([^"]+)"\/>/g)].map(([, kind = "", d = ""]): PlantPath => ({ kind, d })),
  ]),
);
/** The drawing by herb and part; a row for any part has a star. */
const chosen = new Map(
  table
    .trim()
    .split("\n")
    .slice(1)
    .map((row) => row.split("\t"))
    .map(([herb = "", part = "", drawing = ""]) => [`${herb} ${part}`, drawing]),
);

/** What a herb of the maker's own is drawn as, by what is picked of it: plants of no marked habit. */
const plain = {
  root: ["comfrey", "dock", "gentian"],
  fruit: ["haws", "currant", "bramble"],
  flower: ["feverfew", "arnica", "chicory"],
  leaf: ["broadleaf", "sage", "balm", "basil"],
} as const;

function kindOf(part: string): keyof typeof plain {
  if (/root|rhizome|bulb|tuber/.test(part)) return "root";
  if (/berr|fruit|hip|seed|strobile|cone/.test(part)) return "fruit";
  return /flower|petal|blossom|spike/.test(part) ? "flower" : "leaf";
}

/** The name of the drawing of a herb's part; one that the table does not know keeps what its key falls on. */
export function drawingOf(herb: string, part: string): string {
  const among = plain[kindOf(part)];
  return chosen.get(`${herb} ${part}`) ?? chosen.get(`${herb} *`) ?? among[Math.floor(dice(herb)() * among.length)] ?? among[0];
}

export function plantOf(herb: string, part: string): PlantPath[] {
  return symbols.get(drawingOf(herb, part)) ?? [];
}

/** How a specimen stands: each leans a little in its own way, and half of them are turned round. */
export function stance(specimen: string): string {
  const roll = dice(specimen);
  const lean = (roll() * 10 - 5).toFixed(1);
  return `translate(80 188) skewX(${lean}) scale(${roll() < 0.5 ? -1 : 1} 1) translate(-80 -188)`;
}

/** Every drawing there is, for its test. */
export const drawings: ReadonlyMap<string, readonly PlantPath[]> = symbols;
export const rows: ReadonlyMap<string, string> = chosen;
