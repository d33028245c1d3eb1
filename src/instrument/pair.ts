/** The two instruments that are compared: the one that feels right and the one to be strung. */
import { once } from './once.ts';
import { planOf, type Plan } from './plan.ts';
import { limits } from './limits.ts';
import { usual } from './usual.ts';
import type { Instrument, State, Target } from './schema.ts';
import { asTarget, lying } from './workshop.ts';
import { fromInches } from '../physics/index.ts';

export type Side = 'mine' | 'other';
type Scale = Instrument['scale'];

const TWIN_LONGER = fromInches(1);

const within = (value: number): number =>
  Math.min(limits.scale.max, Math.max(limits.scale.min, value));

/** The same scale with its treble side at `treble` m; a multi-scale instrument keeps its proportion. */
export function scaledTo({ treble: from, bass }: Scale, treble: number): Scale {
  return { treble: within(treble), bass: within((treble * bass) / from) };
}

/** An instrument like this one, an inch longer (or shorter, where the site's limit is near), its gauges left open. */
export function twinOf(mine: Instrument): Target {
  const longest = Math.max(mine.scale.treble, mine.scale.bass);
  const longer = longest + TWIN_LONGER <= limits.scale.max;
  const by = longer ? TWIN_LONGER : -TWIN_LONGER;
  const name = longer ? 'a longer twin' : 'a shorter twin';
  const scale = { treble: within(mine.scale.treble + by), bass: within(mine.scale.bass + by) };
  return { ...asTarget(mine), name, scale };
}

/** True when the two have different numbers of strings, so that no string has its counterpart. */
export const unpaired = ({ mine, other }: State): boolean =>
  mine.strings.length !== other.strings.length;

/** What the chapter tries on the scales of the two. */
export const drawnSide = { mine: 'scale-mine', other: 'scale-other' } as const;

/**
 * The state as the bench strings it: its aim, and what was set by hand; with the scales that are tried, and a twin of the
 * reader's instrument in place of one that has another number of strings.
 */
export const asStrung = once((state: State): State => {
  const { mine } = state;
  const other = unpaired(state) ? twinOf(mine) : state.other;
  const tried = <T extends Instrument | Target>(body: T, side: Side): T => {
    const treble = state.trial.drawn?.[drawnSide[side]];
    return treble === undefined ? body : { ...body, scale: scaledTo(body.scale, treble) };
  };
  return { ...state, mine: tried(mine, 'mine'), other: tried(other, 'other') };
});

/** The same with every string asked for its own pull, and nothing set by hand: what chapters compare. */
export const compared = once((state: State): State => {
  const pair = asStrung(state);
  return {
    ...pair,
    other: { ...pair.other, strings: pair.other.strings.map(lying) },
    aim: { mode: 'string', factor: 1, kinds: 'keep', weights: usual.weights },
  };
});

/** The plan of the two as the bench strings them. */
export const strungPlan = once((state: State): Plan => planOf(asStrung(state)));

/** The plan of the two instruments as compared. */
export const comparedPlan = once((state: State): Plan => planOf(compared(state)));
