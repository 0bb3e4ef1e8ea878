import { partName } from "./part";

type Tray = { name: string; common: string; part: string; code: string };

/** Whether the maker gave the tray a name; the core calls one that has none after its plant. */
export function isNamed({ name, common, part }: Tray): boolean {
  return name !== `${common} ${partName(part)}`;
}

/** What tells a tray from the others beside its plant: its name, or its lot code where it has none. */
export function trayName(tray: Tray): string {
  return isNamed(tray) ? tray.name : tray.code;
}
