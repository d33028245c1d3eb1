/** States are never changed, so what is worked out of one can be kept with it: several figures ask for the same. */
import type { State } from './schema.ts';

/** The same function, which works once for each state, or for each value of another kind that is never changed. */
export function once<T, From extends object = State>(work: (from: From) => T): (from: From) => T {
  const known = new WeakMap<From, { readonly value: T }>();
  return (from) => {
    const kept = known.get(from) ?? { value: work(from) };
    known.set(from, kept);
    return kept.value;
  };
}
