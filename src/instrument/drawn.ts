/**
 * What a drawing lets the reader try beside the instrument: where a capo sits, which partial is looked at. One number each,
 * by the name under which a link carries it (x-capo-2). Lengths in m; a choice is counted from 0.
 */
export const drawnRanges = {
  /** fret; 0 for none */
  capo: { min: 0, max: 24 },
} as const;

export type DrawnName = keyof typeof drawnRanges;
export type Drawn = Readonly<Partial<Record<DrawnName, number>>>;

export const drawnNames = Object.keys(drawnRanges) as readonly DrawnName[];

/** What belongs to one string, and goes when another is taken in hand. */
export const ofOneString: readonly DrawnName[] = [];
