/** What this device alone keeps under `key`; null where there is nothing, or nothing may be kept. */
export function keptHere<T>(key: string): T | null {
  try {
    return JSON.parse(localStorage.getItem(key) ?? "null") as T | null;
  } catch {
    return null;
  }
}

/** Keeps a value on this device alone, in the place of the one before; null forgets it. */
export function keepHere(key: string, value: unknown): void {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(value));
  } catch {
    // A browser that forbids keeping anything forgets it with the page.
  }
}
