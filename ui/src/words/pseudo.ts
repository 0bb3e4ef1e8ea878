import { words as english } from "./en";
import type { Words } from "./type";

const PLAIN = "aeiouycdghjklmnrstwzAEIOUYCDGHJKLMNRSTWZ";
const STRANGE = "áéíóúýćďǵȟĵķĺṁńŕśťŵźÁÉÍÓÚÝĆĎǴȞĴĶĹṀŃŔŚŤŴŹ";
/** Stands before and after what a sentence was given. */
const GIVEN = "\u2063";

/** A text of the page with strange letters, each word 40 % longer; what it was given stays as it is. */
function strange(text: string): string {
  return text
    .split(GIVEN)
    .map((piece, at) => (at % 2 ? piece : piece.replace(/\p{L}+/gu, longer)))
    .join("");
}

function longer(word: string): string {
  const letters = [...word].map((letter) => STRANGE[PLAIN.indexOf(letter)] ?? letter);
  return letters.join("") + "~".repeat(Math.ceil(word.length * 0.4));
}

function turned<T>(entry: T): T {
  if (typeof entry === "string") return strange(entry) as T;
  if (typeof entry === "function") {
    const given = (one: unknown) => (typeof one === "string" && one ? GIVEN + one + GIVEN : one);
    return ((...all: unknown[]) => strange(entry(...all.map(given)))) as T;
  }
  if (Array.isArray(entry)) return entry.map(turned) as T;
  return Object.fromEntries(Object.entries(entry as object).map(([name, one]) => [name, turned(one)])) as T;
}

export const words: Words = turned(english);
