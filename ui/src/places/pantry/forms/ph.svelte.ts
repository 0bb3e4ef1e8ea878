import type { ReadWith } from "../../../api";
import { words } from "../../../words";
import { PlainEntry } from "../../../state/form.svelte";

/** A pH that may have been measured, and with what. */
export class PhEntry {
  readonly entry = new PlainEntry("");
  readWith = $state<ReadWith | "">("");

  get request(): { ph?: number; read_with?: ReadWith } {
    if (this.entry.amount === null) return {};
    return { ph: this.entry.amount, ...(this.readWith ? { read_with: this.readWith } : {}) };
  }

  wrong() {
    return this.entry.wrong("ph", words.ph.label, false);
  }
}
