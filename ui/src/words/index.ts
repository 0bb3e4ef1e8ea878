import { language, PSEUDO } from "./language";
import type { Words } from "./type";

export * from "./language";
export type { Words };

/** A word of the trade that the page explains. */
export type TermName = keyof Words["terms"];

const languages = { en: () => import("./en"), de: () => import("./de"), [PSEUDO]: () => import("./pseudo") };

/** The words of the language shown; none may be read before `learn` is done. */
export let words: Words;

/** Brings the language shown, and no other. */
export async function learn(): Promise<void> {
  ({ words } = await languages[language]());
}
