import { keptLanguage } from "../kept/language";

/** Every language under the name it gives itself. */
export const languageNames = { en: "English", de: "Deutsch" };
export type Language = keyof typeof languageNames;

/** A language whose letters are strange, so that a sentence that did not come from the words is seen. */
export const PSEUDO = "en-XA";

function languageOf(tag: string | null): Language | typeof PSEUDO | null {
  if (tag === PSEUDO) return PSEUDO;
  const short = tag?.slice(0, 2) ?? "";
  return short in languageNames ? (short as Language) : null;
}

/** What was chosen on this device; null follows the device. */
export const chosenLanguage = languageOf(keptLanguage());

export const language: Language | typeof PSEUDO =
  chosenLanguage ?? navigator.languages.map(languageOf).find((known) => known !== null) ?? "en";

/** The locale of numbers and dates: the reader's own, region included, where its language is the one shown. */
export const locale = navigator.languages.find((tag) => languageOf(tag) === language) ?? language;

type Forms = { one: string; other: string } & { [other in Intl.LDMLPluralRule]?: string };

let rules: Intl.PluralRules | undefined;
let figures: Intl.NumberFormat | undefined;

/** The form that a count takes in the language shown, with `#` for the count itself. */
export function plural(count: number, forms: Forms): string {
  rules ??= new Intl.PluralRules(locale);
  figures ??= new Intl.NumberFormat(locale, { maximumFractionDigits: 0, useGrouping: "min2" });
  return (forms[rules.select(count)] ?? forms.other).replace("#", figures.format(count));
}
