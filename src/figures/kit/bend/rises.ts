/** The rises of a bend, and what they are called. */
const names = new Map([
  [50, 'a quarter tone'],
  [100, 'a semitone'],
  [200, 'a whole tone'],
  [300, 'a tone and a half'],
  [400, 'two tones'],
]);

/** The rises that a sheet offers, in cents. */
export const rises: readonly number[] = [...names.keys()];
export const riseName = (cents: number): string =>
  names.get(cents) ?? `${Number(cents.toFixed(1))}\u00a0cents`;
