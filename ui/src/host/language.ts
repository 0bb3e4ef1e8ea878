const KEY = "language";

/** Keeps the language of the page on this device; null follows the device again. */
export function keepLanguage(language: string | null): void {
  if (language === null) localStorage.removeItem(KEY);
  else localStorage.setItem(KEY, language);
}

// The words are picked while the page's modules load, so this one is loaded before them.
try {
  const kept = localStorage.getItem(KEY);
  if (kept !== null) document.documentElement.dataset["language"] = kept;
} catch {
  // A browser that forbids keeping anything follows the device.
}
