import { words } from ".";

/** What the figure on a bottle's label is called, by the kind of liquid. */
export function labelWords(kind: string): string {
  switch (kind) {
    case "spirit":
    case "wine":
      return words.supply.strength;
    case "glycerin":
      return words.supply.purity;
    case "vinegar":
      return words.supply.acidity;
    case "honey":
      return words.supply.water;
    default:
      return words.supply.sugar;
  }
}
