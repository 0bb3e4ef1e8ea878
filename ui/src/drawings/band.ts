import { f, type Shape } from "./shape";

const WIDE = 328;
const LINE = 34;
/** More days than that are told by their weeks alone. */
const DAYS_TOLD = 70;
const WEEK = 7;

export const bandBox = `0 4 ${WIDE} 48`;

/** The days of steeping as a scale: those gone, those on which it was shaken, when it may be strained, and today. */
export function steepBand({ of, day, from, shaken }: { of: number; day: number; from: number; shaken: readonly number[] }): Shape[] {
  const last = Math.max(of, 1);
  const x = (at: number) => 6 + (Math.min(Math.max(at, 0), last) / last) * (WIDE - 12);
  let ticks = "";
  for (let at = 0; at <= last; at += last > DAYS_TOLD ? WEEK : 1) ticks += `M${f(x(at))} ${LINE}v${at % WEEK ? 7 : 13}`;
  const checks = shaken.filter((at) => at <= last && at !== day).map((at) => `M${f(x(at) - 3)} ${LINE - 8}l2.2 2.6 4.2 -5.4`);
  let hatch = "";
  const [start, end] = [x(from), x(last)];
  for (let at = start - 8; at < end; at += 5) {
    const low = Math.max(at, start);
    const high = Math.min(at + 9, end);
    if (high > low) hatch += `M${f(low)} ${f(LINE - (low - at))}L${f(high)} ${f(LINE - (high - at))}`;
  }
  return [
    { kind: "window", d: `M${f(start)} ${LINE}V${LINE - 9}H${f(end)}V${LINE}Z` },
    { kind: "hatch", d: hatch },
    { kind: "axis", d: `M${f(x(0))} ${LINE}H${f(x(last))}` },
    { kind: "axis", d: ticks },
    { kind: "gone", d: `M${f(x(0))} ${LINE}H${f(x(day))}` },
    { kind: "shaken", d: checks.join("") },
    { kind: "now", d: `M${f(x(day))} ${LINE + 1}l-6 -9V${LINE - 24}h12v16Z` },
    // Today's pennant stands where today's tick would.
    { kind: "today", d: shaken.includes(day) ? `M${f(x(day) - 3.8)} ${LINE - 15}l2.7 3.2 5 -6.6` : "" },
  ];
}
