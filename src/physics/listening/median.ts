/** The middle one of `values`, the upper one of two; 0 where there are none. */
export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;
