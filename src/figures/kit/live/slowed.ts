/** How many times slower than it sounds a string is drawn to swing, and how that is said beside it. */
export const SLOWED = 100;
export const slowedWords = `vibration shown ${SLOWED} times slower`;
