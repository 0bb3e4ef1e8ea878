/** What a field holds after a tap on a digit or on the decimal mark, which a number has once. */
export function pressed(text: string, key: string): string {
  const isMark = !/\d/.test(key);
  return isMark && /[.,]/.test(text) ? text : text + key;
}

/** What it holds after a tap that takes the last digit back. */
export function erased(text: string): string {
  return text.slice(0, -1);
}
