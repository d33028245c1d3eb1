/** Four instruments that are no guitar, each with a string in hand that is not like the others: one of a pair, the short one, a weighed one, the lowest. */
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import type { State } from '../../src/instrument/schema.ts';
import { asTarget, initialState } from '../../src/instrument/workshop.ts';

/** Each strung like itself, the violin in gut. */
function exampleOf(id: string, string: number): State {
  const mine = moreInstrument(id);
  const target = asTarget(mine);
  const other =
    id === 'phalarope' ? ({ ...target, family: 'violin, gut', builtFor: 'gut' } as const) : target;
  return { ...initialState, mine, other, trial: { string } };
}

export const fourExamples: readonly (readonly [name: string, state: State])[] = [
  ['a mandolin of pairs', exampleOf('knot', 3)],
  ['a banjo with its short fifth in hand', exampleOf('plover', 4)],
  ['a violin', exampleOf('phalarope', 2)],
  ['three strings on a box', exampleOf('stilt', 2)],
];
