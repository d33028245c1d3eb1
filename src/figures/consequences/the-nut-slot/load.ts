/** The whole set's pull with the string in hand changed, string by string, against the set as it is. */
import { once } from '../../../instrument/once.ts';
import { pullOf, pullsOf } from '../../../instrument/pulls.ts';
import type { Instrument, State } from '../../../instrument/schema.ts';
import { loadChange } from '../../../physics/index.ts';
import { triedOf } from '../../trial.ts';

export interface Load {
  /** N, from the highest string */
  readonly before: readonly number[];
  readonly after: readonly number[];
  readonly change: { readonly difference: number; readonly relative: number };
  readonly broken: boolean;
}

const asItIs = once((mine: Instrument) => pullsOf(mine).map((p) => p.tension));

/** Only the gauge is changed: the string keeps its own length and note. */
export const loadOf = once((state: State): Load => {
  const { index, own, tried } = triedOf(state);
  const changed = pullOf({ ...own, a4: state.mine.a4, gauge: tried.gauge });
  const before = asItIs(state.mine);
  const after = before.map((t, i) => (i === index ? changed.tension : t));
  return {
    before,
    after,
    change: loadChange({ tensions: after, reference: before }),
    broken: changed.strain === 'broken',
  };
});
