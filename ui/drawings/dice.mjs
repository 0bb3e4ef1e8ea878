/**
 * Dice that fall by a seed alone, so that the same thing is always drawn the same.
 * @param {string} seed
 * @returns {() => number} from 0 up to 1, which it never is
 */
export function dice(seed) {
  let state = 2166136261;
  for (const letter of seed) state = Math.imul(state ^ letter.charCodeAt(0), 16777619);
  return () => {
    state = Math.imul(state ^ (state >>> 15), 2246822507);
    state = Math.imul(state ^ (state >>> 13), 3266489909);
    return ((state ^= state >>> 16) >>> 0) / 4294967296;
  };
}
