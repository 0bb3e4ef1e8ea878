import type { Interval, Liquid, PourLine } from "../../../api";
import { SPOONS, joined, joinedSpan, massSpan, volume as volumeOf, volumeSpan, type Units } from "../../../format/amount";
import { percentSpan, span } from "../../../format/number";
import { words, type TermName } from "../../../words";

/** `range` is the span of the value in its own unit, for where that stands beside it. */
export type LiquidRow = { label: string; value: string; more?: string | null; range?: string; term?: TermName };

function line(label: string, interval: Interval, unit: string, term?: TermName): LiquidRow {
  const { value, sure, ...ends } = percentSpan(interval, unit);
  const told = { ...(term ? { term } : {}), label, value: unit ? `${value}\u00a0${unit}` : value };
  return sure ? told : { ...told, more: joinedSpan({ value, sure, ...ends }), range: `${ends.low}–${ends.high}` };
}

/**
 * What a liquid is, what keeps it first. Its volume is left out where it is spoken of apart from its jar; of oil alone,
 * the little water that stands beside it is nothing to read figures from.
 */
export function liquidRows(liquid: Liquid, units: Units, { volume = true, pours = [] as PourLine[] } = {}): LiquidRow[] {
  const w = words.jar;
  if (pours.length > 0 && pours.every(({ kind }) => kind === "oil")) {
    const oil = pours.reduce((sum, { ml }) => sum + ml, 0);
    return [{ label: w.endOil, value: joined(volumeOf(oil, units)), more: w.endOilText }];
  }
  const activity = span(liquid.water_activity.highest);
  const inAll = volumeSpan(liquid.volume_ml, units);
  // A spoonful of the whole liquid; its ethanol is sure, its volume moves with the plant's water.
  const [grams, all] = [liquid.ethanol_g.value, liquid.volume_ml];
  const inSpoon = { low: (SPOONS.tea * grams) / all.high, value: (SPOONS.tea * grams) / all.value, high: (SPOONS.tea * grams) / all.low };
  const spoon = w.endSpoon(joinedSpan({ ...span(inSpoon), unit: "g" }));
  const present = (interval: Interval) => interval.high > 0.05;
  return [
    ...(present(liquid.strength_percent_vol)
      ? [
          line(w.endStrength, liquid.strength_percent_vol, words.format.percentVol, "percentVol"),
          ...(volume ? [{ label: w.endEthanol, value: joinedSpan(massSpan(liquid.ethanol_g, units)), more: spoon }] : []),
        ]
      : []),
    ...(present(liquid.glycerol_percent_mass) ? [line(w.endGlycerol, liquid.glycerol_percent_mass, "%", "glycerin")] : []),
    ...(present(liquid.sugar_percent_mass) ? [line(w.endSugar, liquid.sugar_percent_mass, "%")] : []),
    ...(present(liquid.acidity_g_per_100ml) ? [line(w.endAcid, liquid.acidity_g_per_100ml, "g / 100 mL", "acidity")] : []),
    ...(liquid.acid_ph ? [{ ...line(w.endPh, liquid.acid_ph, "", "ph"), more: w.endPhText }] : []),
    ...(liquid.flash_point_c ? [line(w.endFlash, liquid.flash_point_c, "°C", "flashPoint")] : []),
    // Beside an oil there is nothing but the herb's own water.
    ...(volume || liquid.water_activity.highest.low < 0.999
      ? [
          {
            label: w.endWater,
            term: "waterActivity" as const,
            value: activity.value,
            more: activity.sure ? null : words.format.range(activity.low, activity.high, ""),
          },
        ]
      : []),
    ...(volume ? [{ label: w.endVolume, value: joinedSpan(inAll), more: w.endVolumeText }] : []),
  ];
}
