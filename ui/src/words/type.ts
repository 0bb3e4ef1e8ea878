import type { words } from "./en";

/** What another language has to say in the place of an English file. */
export type Translated<T> = T extends string
  ? string
  : T extends (...given: infer G) => string
    ? (...given: G) => string
    : { readonly [K in keyof T]: Translated<T[K]> };

/** Every word of the page; a language is complete or it does not compile. */
export type Words = Translated<typeof words>;
