/** States are never changed, so what is worked out of one can be kept with it: several figures ask for the same. */
import type { State } from './schema.ts';

/** The same function, which works once for each state. */
export function once<T>(work: (state: State) => T): (state: State) => T {
  const known = new WeakMap<State, { readonly value: T }>();
  return (state) => {
    const kept = known.get(state) ?? { value: work(state) };
    known.set(state, kept);
    return kept.value;
  };
}
