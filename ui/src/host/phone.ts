import { invoke } from "@tauri-apps/api/core";

/** A notice that the phone shows by itself; `at` is ISO 8601 in UTC, `id` counts from 1. */
export type Reminder = { id: number; at: string; title: string; body: string };

/** What a phone can do and a computer cannot. */
export interface Phone {
  /** The text of the first code that the camera sees; null when it may not be used. It shines through the page meanwhile. */
  scan(): Promise<string | null>;
  stopScan(): Promise<void>;
  /** Whether notices may be shown; `ask` lets the phone ask its owner. */
  mayRemind(ask: boolean): Promise<boolean>;
  /** Puts these notices in the place of all that wait. */
  remind(reminders: Reminder[]): Promise<void>;
}

export const phone: Phone = {
  async scan() {
    try {
      const asked = await invoke<{ camera: string }>("plugin:barcode-scanner|request_permissions");
      if (asked.camera !== "granted") return null;
      const seen = await invoke<{ content: string }>("plugin:barcode-scanner|scan", { formats: ["QR_CODE"], windowed: true });
      return seen.content;
    } catch {
      return null;
    }
  },

  async stopScan() {
    try {
      await invoke("plugin:barcode-scanner|cancel");
    } catch {
      // Nothing was being scanned.
    }
  },

  async mayRemind(ask) {
    try {
      return await invoke<boolean>("may_remind", { ask });
    } catch {
      return false;
    }
  },

  async remind(reminders) {
    await invoke("remind", { reminders });
  },
};
