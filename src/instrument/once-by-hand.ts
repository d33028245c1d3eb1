/** As `once`, of what is judged: it works anew once the reader's own threshold stands in for the published one. */
import { hand } from './hand.svelte.ts';
import { once } from './once.ts';
import type { State } from './schema.ts';

export function onceByHand<T, From extends object = State>(
  work: (from: From) => T,
): (from: From) => T {
  const by = new WeakMap<object, (from: From) => T>();
  return (from) => {
    const { thresholds } = hand;
    const known = by.get(thresholds) ?? once(work);
    by.set(thresholds, known);
    return known(from);
  };
}
