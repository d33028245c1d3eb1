/** Whole sets of the trade against the plan's aim. */
import { rankSets, type SetScore } from '../physics/index.ts';
import { askedOf } from './plan.ts';
import type { State } from './schema.ts';
import { setsOf, type StringSet } from './sets.ts';

/** The trade's sets for as many strings, from the one that comes most evenly to the wanted pulls. */
export const rankedSets = (state: State): readonly SetScore<StringSet>[] =>
  rankSets({ strings: askedOf(state), sets: setsOf(state.other.family) });

/** Every set of the trade for as many strings, from the lightest, whatever kinds it has: any of them can be put on. */
export const allSets = (state: State): readonly SetScore<StringSet>[] =>
  rankSets({
    strings: askedOf(state).map((asked) => ({ ...asked, kind: undefined })),
    sets: setsOf(state.other.family),
  }).toSorted((a, b) => a.total - b.total);
