import type { Language } from "../../src/words/language";
import { speaking } from "../speaking";

/** A text that a person sees. What is put into it while the app runs stands there as one short word. */
export interface Shown {
  /** The path of the word on the page, or the file and the entry of the core. */
  where: string;
  text: string;
}

/** Stands for what a text is given: a name, a figure, a day. */
const GIVEN = "thing";

const files: Record<Language, Record<string, string>> = {
  en: import.meta.glob("../../../src-tauri/crates/words/texts/en/*.ftl", { query: "?raw", import: "default", eager: true }),
  de: import.meta.glob("../../../src-tauri/crates/words/texts/de/*.ftl", { query: "?raw", import: "default", eager: true }),
};

/** Every text of the page in a language. */
export async function ofThePage(language: Language): Promise<Shown[]> {
  await speaking(language);
  const { words } = await import("../../src/words");
  const all: Shown[] = [];
  const walk = (entry: unknown, where: string): void => {
    if (typeof entry === "string") all.push({ where, text: entry });
    else if (typeof entry === "function") {
      for (const text of said(entry as (...given: unknown[]) => string)) all.push({ where, text });
    } else {
      for (const [name, one] of Object.entries(entry as object)) walk(one, where ? `${where}.${name}` : name);
    }
  };
  walk(words, "");
  return all;
}

/** What a word of the page becomes: with names in it, and with counts where it takes counts. */
function said(word: (...given: unknown[]) => string): string[] {
  const named = word(...Array<string>(word.length).fill(GIVEN));
  if (!named.includes("NaN")) return [named];
  return [1, 3].map((count) => word(...Array<number>(word.length).fill(count)));
}

/** Every text of the core in a language, each form that a count chooses as one of its own. */
export function ofTheCore(language: Language): Shown[] {
  return Object.entries(files[language]).flatMap(([path, file]) => {
    const name = path.split("/").at(-1) ?? path;
    return entries(file).flatMap(([id, value]) => forms(value).map((text) => ({ where: `${name} ${id}`, text: plain(text) })));
  });
}

/** The entries of a Fluent file, without its terms, which are no words. */
function entries(file: string): [string, string][] {
  const found: [string, string][] = [];
  for (const line of file.split("\n")) {
    const [, id, value] = /^([a-z][a-z0-9-]*) =(.*)$/.exec(line) ?? [];
    const last = found.at(-1);
    if (id !== undefined && value !== undefined) found.push([id, value.trim()]);
    else if (last && /^[ }]/.test(line)) last[1] += `\n${line.trim()}`;
  }
  return found;
}

/** A value once for each variant of each choice in it. */
function forms(value: string): string[] {
  const choice = /\{ \$\w+ ->\n((?:\*?\[[^\]]+\][^\n]*\n)+)\}/.exec(value);
  if (!choice) return [value];
  const variants = (choice[1] ?? "").trim().split("\n").map((line) => line.replace(/^\*?\[[^\]]+\] ?/, ""));
  return variants.flatMap((one) => forms(value.replace(choice[0], () => one)));
}

function plain(text: string): string {
  return text
    .replace(/\{ -\w+ \}|\{"[^"]*"\}/g, "")
    .replace(/\{ CAPITAL\([^)]*\) \}/g, "Thing")
    .replace(/\{ [^}]* \}/g, GIVEN);
}

/** The sentences of a text; a label or the name of a thing, without a full stop, is none. */
export function sentences(text: string): string[] {
  return text.split(/(?<=[.?!][”“"]?)\s+/).filter((piece) => /[.?!][”“"]?$/.test(piece) && words(piece).length > 1);
}

/** The words of a text; a figure is one, a sign is none. */
export function words(text: string): string[] {
  return text.split(/[\s\u00a0]+/).filter((piece) => /[\p{L}\p{N}%°]/u.test(piece));
}
