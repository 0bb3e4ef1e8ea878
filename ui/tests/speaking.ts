import { vi } from "vitest";

/** Lets the page speak a language, as on a device that asks for `tag`; what is imported afterwards speaks it. */
export async function speaking(tag: string): Promise<void> {
  vi.resetModules();
  vi.stubGlobal("navigator", { languages: [tag] });
  await (await import("../src/words")).learn();
}
