import { words } from "../words";

/** A part of a plant as a person reads it; one that the maker named is called what they called it. */
export function partName(part: string): string {
  return words.parts[part] ?? part;
}
