import type { TrayCard } from "../../../api";
import { hasCome } from "../../../format/moment";

/** The one state of a tray, by the mark it bears. */
export type TraySign = "done" | "due" | "drying" | "unknown";

export function stateOf(tray: TrayCard): TraySign {
  if (tray.is_dry || tray.probably_dry) return "done";
  if (tray.forgotten || (tray.weigh_at && hasCome(tray.weigh_at.slice(0, 10)))) return "due";
  return tray.hours_left ? "drying" : "unknown";
}

const order: TraySign[] = ["done", "due", "drying", "unknown"];

/** What needs a hand first, and among the drying what will be dry first. */
export function byUrgency(one: TrayCard, other: TrayCard): number {
  const rank = order.indexOf(stateOf(one)) - order.indexOf(stateOf(other));
  return rank || (one.hours_left?.value ?? Infinity) - (other.hours_left?.value ?? Infinity) || one.started_at.localeCompare(other.started_at);
}
