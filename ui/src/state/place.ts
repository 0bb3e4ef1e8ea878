import { keepHere, keptHere } from "../kept/here";

const KEY = "place";
/** After this long the maker comes for something else. */
const KEPT_MS = 60 * 60 * 1000;

type Place = { hash: string; at: number };

/** A phone ends an app that is out of sight; whoever comes back soon finds the screen they left. */
export function keepPlace(): void {
  const kept = keptHere<Place>(KEY);
  if (kept && location.hash === "" && Date.now() - kept.at < KEPT_MS) {
    history.replaceState(history.state, "", kept.hash);
  }
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") keepHere(KEY, { hash: location.hash, at: Date.now() } satisfies Place);
  });
}
