import type { Host } from "./host";
import type { Shell } from "./shell";

export { base64 } from "./base64";
export { keepHere, keptHere } from "./kept";
export { keepLanguage } from "./language";
export type { Answer, Host, TakenAway } from "./host";
export type { Phone, Reminder } from "./phone";

declare global {
  interface Window {
    trugbook?: Shell;
  }
}

/** The host this page runs in; the app's window announces itself, a browser does not. */
export async function findHost(): Promise<Host> {
  if (window.trugbook) return (await import("./shell")).shellHost(window.trugbook);
  return (await import("./preview")).previewHost();
}
