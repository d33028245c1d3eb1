import { nowOf } from '../../instrument/now.ts';
import type { State } from '../../instrument/schema.ts';

/** What the open ring in the felt band stands for: see `leftOn`. */
export const ringWords = (state: State): string =>
  nowOf(state)
    ? 'what is on it now, tuned like the pick'
    : `${state.mine.name || 'your instrument'}’s own string left on`;
