import type { OwnRatio, TrayPage } from "../../../api";
import { plain } from "../../../format/number";
import { words } from "../../../words";

/** What so much fresh herb became of so much dry, beside what the same part of the herb became before. */
export function ratioFact(tray: TrayPage, dry_g: number, before: readonly OwnRatio[]) {
  const w = words.tray;
  const others = before
    .filter((one) => one.part === tray.part && !(one.harvest === tray.harvest && one.fresh_mass_g === tray.fresh_mass_g))
    .map((one) => one.ratio_fresh_per_dry);
  const ends = others.length > 0 ? [...new Set([Math.min(...others), Math.max(...others)].map((one) => plain(one, 1)))].join("–") : "";
  return { label: w.ratioIs, value: words.herb.ratio(plain(tray.fresh_mass_g / dry_g, 1)), more: ends && `${w.earlier}: ${ends}` };
}
