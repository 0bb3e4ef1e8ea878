import type { Host } from "./host";
import { previewHost } from "./preview";
import { shellHost, type Shell } from "./shell";

/** What the garden asks first. The shell asks it too, before the page is read, and reads it from the same file. */
export { default as firstQuestions } from "./first.json";

export { base64 } from "./base64";
export type { Answer, Host, TakenAway } from "./host";
export type { Phone, Reminder } from "./phone";

declare global {
  interface Window {
    trugbook?: Shell;
  }
}

/**
 * The host this page runs in; the app's window announces itself, a browser does not. Both are so short that the one
 * that is not needed costs less than a file to be fetched at the start.
 */
export function findHost(): Host {
  return window.trugbook ? shellHost(window.trugbook) : previewHost();
}
