import type { LotLine } from "../../../api";

export type DriedHerb = { most: LotLine; grams: number };

/** What there is of each dried herb and part, with its largest lot. */
export function driedHerbs(lots: readonly LotLine[]): DriedHerb[] {
  const of = new Map<string, DriedHerb>();
  for (const lot of lots) {
    const key = `${lot.herb} ${lot.part}`;
    const known = of.get(key);
    const most = known && known.most.left_g > lot.left_g ? known.most : lot;
    of.set(key, { most, grams: (known?.grams ?? 0) + lot.left_g });
  }
  return [...of.values()];
}
