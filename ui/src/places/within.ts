import type { PlaceName } from "../parts/Places.svelte";

const places = ["garden", "rack", "pantry"] as const;

/** The screens of a place beside the place itself; what is named nowhere belongs to "more". */
const within: Record<(typeof places)[number], readonly string[]> = {
  garden: ["pick", "harvest", "correct-harvest"],
  rack: ["start-tray", "tray", "weigh", "weighing", "correct-tray", "sample"],
  pantry: [
    ...["fill", "jar", "correct-jar", "fail", "empty", "again", "strain", "top-up", "fill-bottles", "keep-recipe", "card", "class", "take-in"],
    ...["compare", "bottle", "use", "give", "check", "bin-bottle", "correct-bottle", "labels", "lot", "scan"],
  ],
};

/** The place whose list leads to a screen; what is cooked or thrown away is of a harvest or of a tray, the first word of its `id`. */
export function placeOf(screen: string, id: string): PlaceName {
  const named = screen === "bin" || screen === "cook" ? (id.split("/")[0] ?? "") : screen;
  return places.find((place) => place === named || within[place].includes(named)) ?? "more";
}
