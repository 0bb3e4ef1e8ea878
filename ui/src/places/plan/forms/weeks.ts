import type { DueLine, JarCard } from "../../../api";

/** A jar that stands, with the days between which it may be strained. */
export type Standing = Pick<JarCard, "id" | "name" | "code" | "due_from" | "due_to">;
/** Jars that may all be strained on one day. */
export type Together = { day: string; jars: Standing[] };
/** What is to be done on a day; what is overdue belongs to today. */
export type Day = { day: string; lines: DueLine[]; together: Standing[] };
export type Week = { start: string; days: Day[] };

const DAY = 86_400_000;
const dayOf = (moment: string) => moment.slice(0, 10);
const later = (one: string, other: string) => (one > other ? one : other);
const moved = (day: string, days: number) => dayOf(new Date(Date.parse(`${day}T00:00:00Z`) + days * DAY).toISOString());

/**
 * The fewest days on which all jars can be strained, each within its own days, and the first of those that suits all of a
 * day. A jar whose days are over is strained today.
 */
export function gathered(jars: readonly Standing[], today: string): Together[] {
  const found: Together[] = [];
  let rest = jars
    .map((jar) => ({ jar, from: later(dayOf(jar.due_from), today), to: later(dayOf(jar.due_to), today) }))
    .toSorted((one, other) => (one.to === other.to ? 0 : one.to < other.to ? -1 : 1));
  // Whoever must be strained first leaves no later day than its last; all that may be strained by then go with it.
  for (let first = rest[0]; first; first = rest[0]) {
    const { to: last } = first;
    const here = rest.filter(({ from }) => from <= last);
    rest = rest.filter(({ from }) => from > last);
    found.push({ day: here.map(({ from }) => from).reduce(later), jars: here.map(({ jar }) => jar) });
  }
  return found;
}

/** The day that a week begins with, `first` being 1 for Monday and 7 for Sunday. */
export function weekOf(day: string, first: number): string {
  return moved(day, -((new Date(`${day}T00:00:00Z`).getUTCDay() - first + 7) % 7));
}

/** The last day of a week, by its first. */
export const endOf = (start: string) => moved(start, 6);

/** The first day of the week after it. */
export const after = (start: string) => moved(start, 7);

/** What is due, by week and day; two jars or more that go on one day stand there together, and nowhere else. */
export function weeks(lines: readonly DueLine[], jars: readonly Standing[], today: string, first: number): Week[] {
  const days = new Map<string, Day>();
  const at = (day: string) => days.get(day) ?? days.set(day, { day, lines: [], together: [] }).get(day)!;
  const known = new Set(lines.filter(({ what }) => what === "strain").map(({ id }) => id));
  const together = gathered(jars, today).filter((one) => one.jars.length > 1 && one.jars.some(({ id }) => known.has(id)));
  const taken = new Set(together.flatMap((one) => one.jars.map(({ id }) => id)));
  for (const one of together) at(one.day).together = one.jars;
  for (const line of lines) {
    if (line.what !== "strain" || !taken.has(line.id)) at(later(line.on, today)).lines.push(line);
  }
  const found = new Map<string, Week>();
  for (const day of [...days.values()].toSorted((one, other) => (one.day < other.day ? -1 : 1))) {
    const start = weekOf(day.day, first);
    const week = found.get(start) ?? found.set(start, { start, days: [] }).get(start)!;
    week.days.push(day);
  }
  return [...found.values()];
}
