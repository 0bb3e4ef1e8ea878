import { locale } from "../words";
import { once } from "./once";

const lists = once(() => new Intl.ListFormat(locale, { type: "conjunction" }));

/** "leaf, flower and root", as the language joins what belongs together. */
export function listed(items: string[]): string {
  return lists().format(items);
}
