import type { Air, Failure } from "../../../api";
import type { Units } from "../../../format/amount";
import { words } from "../../../words";
import { DegreesEntry, PlainEntry } from "../../../state/form.svelte";

/** The air of the drying room as it is being typed: both figures or none, since one alone says nothing about drying. */
export class AirEntry {
  readonly temperature: DegreesEntry;
  readonly humidity: PlainEntry;

  constructor(units: Units, air?: Air | null) {
    this.temperature = new DegreesEntry(units, air?.temperature_c);
    this.humidity = new PlainEntry("%", air?.relative_humidity_percent);
  }

  get empty(): boolean {
    return this.temperature.empty && this.humidity.empty;
  }

  wrong(): Failure[] {
    const w = words.tray;
    return [
      ...this.temperature.wrong("air.temperature_c", w.temperature, !this.empty),
      ...this.humidity.wrong("air.relative_humidity_percent", w.humidity, !this.empty),
    ];
  }

  get request(): { air?: Air } {
    if (this.empty) return {};
    return {
      air: { temperature_c: this.temperature.amount ?? 0, relative_humidity_percent: this.humidity.amount ?? 0 },
    };
  }
}
