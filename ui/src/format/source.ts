import type { Status } from "../api";
import { words } from "../words";

/** How sure a fact is, and what says so; a source that says no more than that is not said twice. */
export function sourced(status: Status, source: string | null): string {
  const sure = words.status[status];
  return !source || source.toLowerCase() === sure.toLowerCase() ? sure : `${sure}: ${source}`;
}
