import { words } from "../words";
import { plain } from "./number";

/** A size in decimal bytes, as file managers tell it. */
export function size(bytes: number): string {
  const { kb, mb, gb } = words.safe.sizes;
  const [by, unit] = bytes >= 1e9 ? [1e9, gb] : bytes >= 1e6 ? [1e6, mb] : [1e3, kb];
  return `${plain(bytes / by, by === 1e3 ? 0 : 1)}\u00a0${unit}`;
}
