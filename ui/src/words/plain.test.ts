import { beforeAll, describe, expect, test } from "vitest";
import { refused } from "../../tests/plain/refused";
import { ease, median } from "../../tests/plain/reading";
import { ofTheCore, ofThePage, sentences, words, type Shown } from "../../tests/plain/shown";
import type { Language } from "./language";

/** Lines of the core that warn of harm, and those of the page. */
const CAUTION =
  /^(cautions|clauses|poison)\.ftl (caution|clause|general|poison|do-not-make|wild)|^look_alikes\.ftl .*-(why|tell|mark)$|^preparations\.ftl (spoiled|note|ended|storage)|lookAlikesText|ruledOut|[bB]inItText|restBinText|onlyDate|noDose|checkHow|outcomeBad|bin\.mould|tray\.(damp|coarse|trySnap|probably)|topUpPastDue|outsideOnly|cook\.text/;

/** The least median for German; tests/words.md says how it was found. */
const GERMAN = 73.6;

describe.each(["en", "de"] as Language[])("every sentence in %s", (language) => {
  let shown: Shown[];
  beforeAll(async () => {
    shown = [...(await ofThePage(language)), ...ofTheCore(language)];
  });

  test("is counted: page and core give thousands of texts, and cautions among them", () => {
    expect(shown.length).toBeGreaterThan(2500);
    expect(shown.filter(({ where }) => CAUTION.test(where)).length).toBeGreaterThan(400);
  });

  test("is easy to read aloud, by the middle one", () => {
    const middle = median(shown.flatMap(({ text }) => sentences(text)).map((one) => ease(one, language)));
    expect(middle).toBeGreaterThanOrEqual(language === "en" ? 70 : GERMAN);
  });

  test("has at most twenty words", () => {
    const long = shown.flatMap(({ where, text }) => sentences(text).filter((one) => words(one).length > 20).map((one) => `${where}: ${one}`));
    expect(long).toEqual([]);
  });

  test("holds no sign for a word, no abbreviation, no identifier, no host, no surname and no word of another trade", () => {
    expect(shown.flatMap(({ where, text }) => refused(text, language).map((why) => `${where}: ${why}: ${text}`))).toEqual([]);
  });
});

test("a caution is easy to read aloud", async () => {
  const shown = [...(await ofThePage("en")), ...ofTheCore("en")].filter(({ where }) => CAUTION.test(where));
  const hard = shown.map(({ where, text }) => ({ where, text, at: Math.round(ease(text, "en")) })).filter(({ at }) => at < 55);
  expect(hard.map(({ where, text, at }) => `${at} ${where}: ${text}`)).toEqual([]);
});

describe("the measures", () => {
  test("give a sentence the figure that is counted by hand", () => {
    // 6 words and 6 syllables in one sentence: 206.835 - 6.09 - 84.6.
    expect(ease("The cat sat on the mat.", "en")).toBeCloseTo(116.145, 3);
    // 5 words and 7 syllables in one sentence: 180 - 5 - 81.9.
    expect(ease("Gieß das Wasser ins Gläschen.", "de")).toBeCloseTo(180 - 5 - (58.5 * 7) / 5, 3);
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 2, 3])).toBe(2.5);
  });

  test.each([
    ["en", "Keep it at pH <= 4.6."],
    ["en", "Leaf/flower"],
    ["en", "A spirit, e.g. vodka"],
    ["en", "See look_alikes.csv"],
    ["en", "Set picked_at first."],
    ["en", "The book says so."],
    ["en", "Read www.example.org first."],
    ["en", "The weigh-in was struck out."],
    ["de", "Stiel u. Blatt"],
    ["de", "Das Buch sagt es."],
    ["de", "Die Rezeptur behalten"],
  ] as [Language, string][])("refuse what must not be shown (%s: %s)", (language, text) => {
    expect(refused(text, language)).not.toEqual([]);
  });

  test.each([
    ["en", "Keep it below pH 4.6 for 24 hours at 4 °C, 1 g to 5 mL, 25 % vol."],
    ["en", "The first line names the columns “picked_at” and “gross_g”."],
    ["de", "Halt es unter pH 4,6, mit 0,8 g/mL."],
  ] as [Language, string][])("pass units, figures and what stands in quotation marks (%s: %s)", (language, text) => {
    expect(refused(text, language)).toEqual([]);
  });
});
