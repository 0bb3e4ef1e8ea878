const KEY = "language";

/** Keeps the language of the page on this device; null follows the device again. */
export function keepLanguage(language: string | null): void {
  if (language === null) localStorage.removeItem(KEY);
  else localStorage.setItem(KEY, language);
}

/** The language kept on this device; null where none is, or where a browser forbids keeping anything. */
export function keptLanguage(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}
