import type { Language } from "../../src/words/language";

/** What stands in quotation marks is somebody else's word or a name to be typed letter by letter. */
const QUOTED = /“[^“”]*”|„[^„“]*“|"[^"]*"/g;
/** A slash that is part of a unit. */
const UNIT = /\b(?:g|mg|mL|kg)\s?\/\s?(?:mL|L|m³)(?!\p{L})/gu;

/** What no text may hold, in any language. */
const everywhere: [string, RegExp][] = [
  ["a sign for a word", /[<>≤≥≈≠±=→←&+]/],
  ["a slash between words", /[\p{L})]\s?\/\s?[\p{L}(]/u],
  ["an identifier", /\b[a-z]+_[a-z_]+\b|\b(?!pH\b|mL\b|kB\b|iOS\b)[a-z]+[A-Z]\w*\b/],
  ["a file", /\b[\w-]+\.(?:csv|tsv|json|ts|rs|ftl|toml|sqlite|zip|sql|md)\b/],
  ["a host", /\bwww\.|https?:|\b[a-z0-9-]{2,}\.(?:com|org|net|edu|gov|info|app|de|eu|uk)\b/],
  // Authors and scientists, whose names belong to sources; not Latin or trade names.
  ["a surname", /\b(?:Moore|Buhner|Tilgner|Hoffmann|Green|Cech|Easley|Horne|Gladstar|Grieve|King's|Felter|Lloyd|Wichtl|Hager|Bartels|Norrish|Gay-Lussac)\b/],
];

const perLanguage: Record<Language, [string, RegExp][]> = {
  en: [
    ["an abbreviation", /\b(?:e\.g|i\.e|etc|cf|vs|approx|resp|incl|max|min|temp|no|nr)\.|\bw\/|\betc\b/i],
    ["a book that speaks", /\b[Tt]he book (?:says|tells|knows|works|would|cannot|did not|never)|\bbook says\b|\bBy the book\b/],
    ["a word for which we have another", /\b(?:weigh-ins?|struck|strike|set aside|wish(?:es)?|bin(?:ned)?|glycerol|written down|write it down|taken back|take back|correction|shall|lately|menstrua)\b/i],
  ],
  de: [
    ["an abbreviation", /\b(?:z\. ?B|d\. ?h|u\. ?a|bzw|usw|ggf|ca|evtl|inkl|max|min|Nr|vgl)\.|\b\p{L}+ u\. \p{L}/iu],
    ["a book that speaks", /\b[Dd]as Buch (?:sagt|weiß|rechnet|kann|würde|hat nicht)|\bNach dem Buch\b/],
    ["a word for which we have another", /\b(?:gestrichen|streichen|ausgesondert|aussondern|Rezeptur(?:en)?|behalten|Ausgabe|Wunsch|Wünsche|Glycerol\w*|Droge|berichtig\w*|Berichtig\w*|zurückgenommen|Zurücknehmen|Marc|Trugbook|Regal|Rückverfolgung|versiegel\w*)\b/u],
  ],
};

/** Why a text may not be shown, one reason for each thing it holds. */
export function refused(text: string, language: Language): string[] {
  const bare = text.replace(QUOTED, "").replace(UNIT, "");
  return [...everywhere, ...perLanguage[language]].filter(([, sign]) => sign.test(bare)).map(([why, sign]) => `${why} (${sign.exec(bare)?.[0]})`);
}
