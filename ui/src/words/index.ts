import { en } from "./en";

type Loosened<T> = T extends string
  ? string
  : T extends (...given: infer G) => string
    ? (...given: G) => string
    : { readonly [K in keyof T]: Loosened<T[K]> };

/** Every word of the page; a language is complete or it does not compile. */
export type Words = Loosened<typeof en>;

const languages: Record<string, Words> = { en };

const wanted = navigator.languages.find((tag) => tag.slice(0, 2) in languages) ?? "en";

/** The locale of numbers and dates: the reader's own, region included. */
export const locale = wanted;
export const language = wanted.slice(0, 2);
export const words: Words = languages[language] ?? en;
