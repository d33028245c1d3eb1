/** What holds until the reader chooses: what a link leaves out. */
export const usual = {
  weights: { pull: 1, push: 0, travel: 0 },
  /** A whole tone, in cents, where both parts of the string are equally long */
  bend: { fret: 12, rise: 200, shown: false },
} as const;
