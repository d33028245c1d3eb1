/** What of a state is the reader's own, and how one person's state differs from another's. */
import { encode } from './link.ts';
import type { State } from './schema.ts';

/** A state with nothing tried; the string in hand stays in hand. */
export const untried = (state: State): State => ({
  ...state,
  trial: { string: state.trial.string },
});

const bare = (state: State): string => encode({ ...state, trial: { string: 0 } });

/** Whether two states differ in more than what is tried on them. */
export const differs = (a: State, b: State): boolean => bare(a) !== bare(b);
