/** What is made when it is first asked for: the tables of numbers and days take a phone longer to open than a screen may wait. */
export function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}
