/** The string in hand: as it is on the reader's instrument, and as the figures try it out. */
import { once } from '../instrument/once.ts';
import { lengthOf, pullOf, type Pull } from '../instrument/pulls.ts';
import type { Drawn, DrawnName } from '../instrument/drawn.ts';
import type { State, Trial } from '../instrument/schema.ts';

export interface Tried {
  /** Counted from 0 at the highest */
  readonly index: number;
  readonly own: Pull;
  readonly tried: Pull;
  /** Tried length over own length, the same for every string of the instrument */
  readonly lengthRatio: number;
}

/** As much of a state as the string in hand hangs on. */
export type Played = Pick<State, 'mine' | 'trial'>;

/** The scale length in m that stands for the whole instrument in a drawing: its treble side's. */
export const mainScale = (state: Pick<State, 'mine'>): number => state.mine.scale.treble;

/** By how much the tried length differs from the instrument's, as a ratio. A trial names the treble side's length. */
export const lengthRatioOf = (state: Played): number =>
  (state.trial.length ?? mainScale(state)) / mainScale(state);

export const triedOf = once((state: Played): Tried => {
  const { mine, trial } = state;
  const index = Math.min(trial.string, mine.strings.length - 1);
  const string = mine.strings[index];
  if (!string)
    throw new RangeError(`trial.string is ${trial.string}; permitted: a string of the instrument`);
  const lengthRatio = lengthRatioOf(state);
  const speakingLength = lengthOf(mine, index);
  const own = pullOf({ gauge: string, note: string.note, a4: mine.a4, speakingLength });
  const tried = pullOf({
    gauge: trial.gauge ?? string,
    note: trial.note ?? string.note,
    a4: mine.a4,
    speakingLength: speakingLength * lengthRatio,
  });
  return { index, own, tried, lengthRatio };
});

/** What drawings try on one gauge, and on one string: it goes when another is taken in hand. */
const ofOneGauge: readonly DrawnName[] = ['jaw'];
const ofOneString: readonly DrawnName[] = [
  ...ofOneGauge,
  'stairs',
  'core',
  'outer',
  'shape',
  'wrap',
  'second',
];

/** The state with some of its trial changed. Another string in hand leaves behind what was tried on the one before. */
export function withTrial(state: State, trial: Partial<Trial>): State {
  const next = { ...state, trial: { ...state.trial, ...trial } };
  const isOther = trial.string !== undefined && trial.string !== state.trial.string;
  const gone = isOther ? ofOneString : 'gauge' in trial ? ofOneGauge : [];
  return withDrawn(next, Object.fromEntries(gone.map((name) => [name, undefined])));
}

/** The state with some of what drawings try for themselves changed; `undefined` takes a value back. */
export function withDrawn(
  state: State,
  values: Readonly<Partial<Record<DrawnName, number | undefined>>>,
): State {
  const drawn: typeof values = state.trial.drawn ?? {};
  // What changes nothing is no step of undo.
  if (Object.entries(values).every(([name, value]) => drawn[name as DrawnName] === value))
    return state;
  const entries = Object.entries({ ...drawn, ...values }).filter(
    ([, value]) => value !== undefined,
  );
  const bare = withoutDrawn(state);
  return entries.length > 0
    ? { ...bare, trial: { ...bare.trial, drawn: Object.fromEntries(entries) as Drawn } }
    : bare;
}

/** A drawing's own value, unless it is the usual one, which a link need not carry. It carries six decimals. */
export const unlessUsual = (value: number, usual: number): number | undefined =>
  Math.abs(value - usual) < 5e-7 ? undefined : value;

/** The state with nothing tried out on the instrument; the string in hand stays in hand, and drawings keep what is theirs. */
export const withoutTrial = (state: State): State => {
  const { string, drawn } = state.trial;
  return { ...state, trial: { string, ...(drawn && { drawn }) } };
};

/** The state with the tried length made the instrument's own, its bass side in proportion. */
export function withLengthKept(state: State): State {
  const ratio = lengthRatioOf(state);
  const { treble, bass } = state.mine.scale;
  const scale = { treble: treble * ratio, bass: bass * ratio };
  return { ...withoutTrial(state), mine: { ...state.mine, scale } };
}

export const isTrying = ({ trial }: State): boolean =>
  trial.length !== undefined || trial.note !== undefined || trial.gauge !== undefined;

/** The state without what single drawings try: what a sheet to take along is made from. */
export function withoutDrawn(state: State): State {
  const trial = { ...state.trial };
  delete trial.drawn;
  return { ...state, trial };
}
