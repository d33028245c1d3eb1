/** Moving one of several to another place. */

/** `ids` with `id` at place `to`, which is clamped. */
export function moved(ids: readonly string[], id: string, to: number): readonly string[] {
  const rest = ids.filter((other) => other !== id);
  const at = Math.min(rest.length, Math.max(0, to));
  return [...rest.slice(0, at), id, ...rest.slice(at)];
}

/**
 * The place that a row dragged to height `y` takes: it changes places once it is past the middle of a neighbour, so that
 * rows of different height don't flicker. `from` is its present place.
 */
export function placeAt(
  rows: readonly { readonly top: number; readonly bottom: number }[],
  y: number,
  from: number,
): number {
  const middle = ({ top, bottom }: { top: number; bottom: number }) => (top + bottom) / 2;
  let to = from;
  rows.forEach((row, i) => {
    if (i < from && y < middle(row)) to = Math.min(to, i);
    if (i > from && y > middle(row)) to = Math.max(to, i);
  });
  return to;
}
