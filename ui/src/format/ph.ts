import type { PhShown, ReadWith } from "../api";
import { words } from "../words";
import { shortDay } from "./moment";
import { plain, span } from "./number";

/** A reading as a fact: the figure, and under it where the real one lies, how it was read and when. */
export function measuredPh({ ph, read_with, at, read_in }: PhShown) {
  const { low, high } = span(ph);
  const w = words.ph;
  const more = [
    words.format.range(low, high, "").trim(),
    ...(read_with ? [w.ways[read_with]] : []),
    ...(read_in ? [w.readIn(read_in)] : []),
    shortDay(at),
  ];
  return { label: w.measured, value: plain(ph.value, 2), more: more.join(" · ") };
}

/** What a line about a look or a straining adds, where a pH was read. */
export function phRead({ ph, read_with }: { ph: number | null; read_with: ReadWith | null }): string {
  if (ph === null) return "";
  return ` · ${words.ph.line(plain(ph, 2))}${read_with ? ` (${words.ph.ways[read_with]})` : ""}`;
}
