/** What a code of a recipe begins with; a phone may say the scheme in capitals or with slashes. */
const RECIPE = /^\s*trugbook:\/*recipe\//i;

/** Where what was scanned, typed or opened leads: a recipe to be taken in, or whatever bears a lot code. */
export function addressOfCode(text: string): string {
  return `/${RECIPE.test(text) ? "take-in" : "lot"}/${encodeURIComponent(text)}`;
}
