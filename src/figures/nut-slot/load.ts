/** The whole set's pull with the string in hand changed, string by string, against the set as it is. */
import { pullOf, pullsOf } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import { loadChange } from '../../physics/index.ts';
import { triedOf } from '../trial.ts';

export interface Load {
  /** N, from the highest string */
  readonly before: readonly number[];
  readonly after: readonly number[];
  readonly change: { readonly difference: number; readonly relative: number };
  readonly broken: boolean;
}

/** Only the gauge is changed: the string keeps its own length and note. */
export function loadOf(state: State): Load {
  const pulls = pullsOf(state.mine);
  const { index, own, tried } = triedOf(state);
  const changed = pullOf({ ...own, a4: state.mine.a4, gauge: tried.gauge });
  const before = pulls.map((p) => p.tension);
  const after = before.map((t, i) => (i === index ? changed.tension : t));
  return {
    before,
    after,
    change: loadChange({ tensions: after, reference: before }),
    broken: changed.strain === 'broken',
  };
}
