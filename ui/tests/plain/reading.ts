import type { Language } from "../../src/words/language";
import { names } from "./names";
import { sentences, words } from "./shown";

/**
 * How easy a text is to read aloud, 100 being very easy: Flesch's formula for English (1948), Amstad's for German (1978).
 * The name of a plant, a medicine, an illness or an authority counts as a word of one syllable, for no other word says it.
 */
export function ease(text: string, language: Language): number {
  const all = words(text);
  const long = all.length / Math.max(1, sentences(text).length);
  const syllables = all.reduce((sum, word) => sum + syllablesOf(word, language), 0) / all.length;
  return language === "en" ? 206.835 - 1.015 * long - 84.6 * syllables : 180 - long - 58.5 * syllables;
}

export function median(figures: number[]): number {
  const sorted = [...figures].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return ((sorted[Math.ceil(middle) - 1] ?? 0) + (sorted[Math.floor(middle)] ?? 0)) / 2;
}

function syllablesOf(word: string, language: Language): number {
  return word
    .split(/[-/\u2013]/)
    .map((part) => part.toLowerCase().replace(/[^\p{L}]/gu, ""))
    .reduce((sum, part) => sum + (!part || names[language].has(part) ? 0 : language === "en" ? english(part) : german(part)), 0) || 1;
}

/** Groups of vowels, without the vowels that are written and not said, and with those that are said apart. */
function english(word: string): number {
  const said = word
    .replace(/(?<=[^aeiouytd])ed$|(?<=[aeiouy])d$/, "d")
    .replace(/(?<=[^aeiouysxzcg]|[^s]h)es$/, "s")
    .replace(/(?<=[^aeiouyl])e$|(?<=[aeiouy]l)e$|(?<=[aeiouy][^aeiouy])e(?=ly$|ful|less|ment)/, "");
  const groups = said.replace(/^y/, "").match(/[aeiouy]+/g)?.length ?? 0;
  return Math.max(1, groups + (/[aeiouy]ing$/.test(word) ? 1 : 0) + (/ia(?!n)|iu/.test(word) ? 1 : 0));
}

/** One syllable for each vowel; a diphthong and a doubled vowel are one. */
function german(word: string): number {
  return Math.max(1, word.match(/ei|ai|au|eu|äu|ie|aa|ee|oo|[aeiouyäöü]/g)?.length ?? 0);
}
