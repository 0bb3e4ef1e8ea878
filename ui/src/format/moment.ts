import { locale } from "../words";
import { once } from "./once";

const day = once(() => new Intl.DateTimeFormat(locale, { day: "numeric", month: "short" }));
const dayOfYear = once(() => new Intl.DateTimeFormat(locale, { day: "numeric", month: "short", year: "numeric" }));
const month = once(() => new Intl.DateTimeFormat(locale, { month: "long", year: "numeric" }));
const lone = once(() => new Intl.DateTimeFormat(locale, { month: "long" }));
const letter = once(() => new Intl.DateTimeFormat(locale, { month: "narrow" }));
const dayOfWeek = once(() => new Intl.DateTimeFormat(locale, { weekday: "long", day: "numeric", month: "long" }));
const clock = once(() => new Intl.DateTimeFormat(locale, { hour: "numeric", minute: "2-digit" }));

// A bare date is a calendar day, not midnight in Greenwich.
function moment(text: string): Date {
  return new Date(/^\d{4}-\d\d-\d\d$/.test(text) ? `${text}T12:00:00` : text);
}

/** A day and its month stay on one line, in whatever order the language has them. */
function told(format: Intl.DateTimeFormat, at: Date): string {
  const parts = format.formatToParts(at);
  const joins = (place: number) => ["day", "month"].includes(parts[place]?.type ?? "");
  return parts.map(({ value }, place) => (joins(place - 1) && joins(place + 1) ? value.replace(" ", "\u00a0") : value)).join("");
}

/** "5 Jun", with the year when it is not this one. */
export function shortDay(text: string): string {
  const at = moment(text);
  return told((at.getFullYear() === new Date().getFullYear() ? day : dayOfYear)(), at);
}

/** "5 Jun" of any year. */
export function anyYear(text: string): string {
  return told(day(), moment(text));
}

/** The core's sentences with their bare dates as a person reads them. */
export function withDays(text: string): string {
  return text.replace(/\b\d{4}-\d\d-\d\d\b/g, shortDay).replace(/(\d) (?=%|(?:g|kg|mL|C|h)\b)|% (?=vol\b|w\/w)/g, (torn) => `${torn[0]}\u00a0`);
}

/** How many days of the calendar lie between two moments, each in its own place's time. */
export function daysBetween(from: string, to: string): number {
  const day = (text: string) => Date.parse(`${text.slice(0, 10)}T00:00:00Z`) / 86_400_000;
  return day(to) - day(from);
}

/** The day of the calendar on this device, as "2026-12-05". */
export function today(): string {
  return fieldMoment(new Date()).slice(0, 10);
}

/** Whether a day of the calendar is today or past on this device. */
export function hasCome(text: string): boolean {
  return text <= today();
}

/** "Saturday 5 December". */
export function weekDay(text: string): string {
  return told(dayOfWeek(), moment(text));
}

/** The day that a week begins with where the reader lives, from 1 for Monday to 7 for Sunday; Monday where it is not known. */
export function firstOfWeek(): number {
  const here: Intl.Locale & { getWeekInfo?: () => { firstDay: number }; weekInfo?: { firstDay: number } } = new Intl.Locale(locale);
  return (here.getWeekInfo?.() ?? here.weekInfo)?.firstDay ?? 1;
}

export function monthOf(text: string): string {
  return month().format(moment(text));
}

/** "June", by its number from 0 on. */
export function monthName(month: number): string {
  return lone().format(new Date(2026, month, 15));
}

/** "J". */
export function monthLetter(month: number): string {
  return letter().format(new Date(2026, month, 15));
}

/** "5 Jun, 09:40". */
export function dayAndTime(text: string): string {
  return `${shortDay(text)}, ${clock().format(moment(text))}`;
}

/** "28 Nov", an hour after the fresh weighing being given. */
export function dayAfter(start: string, hours: number): string {
  return shortDay(new Date(moment(start).getTime() + hours * 3_600_000).toISOString());
}

/** What `<input type="datetime-local">` wants, in local time. */
export function fieldMoment(at: Date): string {
  const two = (n: number) => String(n).padStart(2, "0");
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}T${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** The wire's RFC 3339 with this device's own offset, from what such a field holds. */
export function wireMoment(field: string): string {
  const offset = -new Date(field).getTimezoneOffset();
  const two = (n: number) => String(Math.floor(n)).padStart(2, "0");
  const sign = offset < 0 ? "-" : "+";
  const minutes = Math.abs(offset);
  return `${field.length === 16 ? `${field}:00` : field}${sign}${two(minutes / 60)}:${two(minutes % 60)}`;
}
