import { keptLanguage } from "../host/language";
import { de } from "./de";
import { en } from "./en";

type Loosened<T> = T extends string
  ? string
  : T extends (...given: infer G) => string
    ? (...given: G) => string
    : { readonly [K in keyof T]: Loosened<T[K]> };

/** Every word of the page; a language is complete or it does not compile. */
export type Words = Loosened<typeof en>;

const languages = { en, de };
export type Language = keyof typeof languages;

/** Every language under the name it gives itself. */
export const languageNames: Record<Language, string> = { en: "English", de: "Deutsch" };

function languageOf(tag: string | null): Language | null {
  const short = tag?.slice(0, 2) ?? "";
  return short in languages ? (short as Language) : null;
}

/** What was chosen on this device; null follows the device. */
export const chosenLanguage = languageOf(keptLanguage());

export const language: Language =
  chosenLanguage ?? navigator.languages.map(languageOf).find((known) => known !== null) ?? "en";

/** The locale of numbers and dates: the reader's own, region included, where its language is the one shown. */
export const locale = navigator.languages.find((tag) => languageOf(tag) === language) ?? language;
export const words: Words = languages[language];
