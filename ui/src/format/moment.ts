import { locale } from "../words";
import { once } from "./once";

const day = once(() => new Intl.DateTimeFormat(locale, { day: "numeric", month: "short" }));
const dayOfYear = once(() => new Intl.DateTimeFormat(locale, { day: "numeric", month: "short", year: "numeric" }));
const month = once(() => new Intl.DateTimeFormat(locale, { month: "long", year: "numeric" }));
const clock = once(() => new Intl.DateTimeFormat(locale, { hour: "numeric", minute: "2-digit" }));

// A bare date is a calendar day, not midnight in Greenwich.
function moment(text: string): Date {
  return new Date(/^\d{4}-\d\d-\d\d$/.test(text) ? `${text}T12:00:00` : text);
}

/** "5 Jun", with the year when it is not this one. */
export function shortDay(text: string): string {
  const at = moment(text);
  return (at.getFullYear() === new Date().getFullYear() ? day : dayOfYear)().format(at);
}

/** The core's sentences with their bare dates as a person reads them. */
export function withDays(text: string): string {
  return text.replace(/\b\d{4}-\d\d-\d\d\b/g, shortDay).replace(/(\d) (?=%|(?:g|kg|mL|C|h)\b)|% (?=vol\b|w\/w)/g, (torn) => `${torn[0]}\u00a0`);
}

/** Whether a day of the calendar is today or past on this device. */
export function hasCome(text: string): boolean {
  return text <= fieldMoment(new Date()).slice(0, 10);
}

export function monthOf(text: string): string {
  return month().format(moment(text));
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
