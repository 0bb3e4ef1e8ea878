import { language, PSEUDO } from "./language";
import type { Words } from "./type";

export * from "./language";
export type { Words };

/** A word of the trade that the page explains. */
export type TermName = keyof Words["terms"];

const languages = { en: () => import("./en"), de: () => import("./de"), [PSEUDO]: () => import("./pseudo") };

// Asked for before the rest of the page's first script is run, which takes it longer than the way there and back.
const coming = languages[language]();

/** The words of the language shown; none may be read before `learn` is done. */
export let words: Words;

/** Brings the language shown, and no other. */
export async function learn(): Promise<void> {
  ({ words } = await coming);
}
