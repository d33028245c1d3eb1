/** How many times slower than it sounds a string is drawn to swing, and how that is said beside it. */
export const SLOWED = 100;
/** For a narrow drawing, beside what it is about */
export const slowedShort = `shown ${SLOWED} times slower`;
export const slowedWords = `vibration ${slowedShort}`;
