import { words } from "../words";
import type { Units } from "./amount";
import { plain } from "./number";

/** "22 °C, 55 % humidity". */
export function airWas(air: { temperature_c: number; relative_humidity_percent: number }, units: Units): string {
  const temperature =
    units === "us" ? `${plain(air.temperature_c * 1.8 + 32, 0)}\u00a0°F` : `${plain(air.temperature_c, 0)}\u00a0°C`;
  return words.tray.airWas(temperature, `${plain(air.relative_humidity_percent, 0)}\u00a0%`);
}
