/** A shuffle that a seed decides: the same at build, in the browser and on the next visit. */

/** FNV-1a, 32 bits. */
function hash(text: string): number {
  let h = 0x811c9dc5;
  for (const char of text) h = Math.imul(h ^ (char.codePointAt(0) ?? 0), 0x01000193);
  return h >>> 0;
}

/** Items in an order that passes `fits`, if any rotation of the shuffle does. */
export function shuffled<T>(items: readonly T[], seed: string, fits: (tried: T[]) => boolean): T[] {
  const order = items.map((item, i) => ({ item, rank: hash(`${seed} ${i}`) }));
  let tried = order.toSorted((a, b) => a.rank - b.rank).map(({ item }) => item);
  for (let turn = 1; turn < items.length && !fits(tried); turn += 1)
    tried = [...tried.slice(1), ...tried.slice(0, 1)];
  return tried;
}
