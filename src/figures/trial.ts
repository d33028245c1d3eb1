/** The string in hand: as it is on the reader's instrument, and as the figures try it out. */
import { lengthOf, pullOf, type Pull } from '../instrument/pulls.ts';
import { ofOneString, type Drawn, type DrawnName } from '../instrument/drawn.ts';
import type { State, Trial } from '../instrument/schema.ts';

export interface Tried {
  /** Counted from 0 at the highest */
  readonly index: number;
  readonly own: Pull;
  readonly tried: Pull;
  /** Tried length over own length, the same for every string of the instrument */
  readonly lengthRatio: number;
}

/** The scale length in m that stands for the whole instrument in a drawing: its treble side's. */
export const mainScale = (state: State): number => state.mine.scale.treble;

/** By how much the tried length differs from the instrument's, as a ratio. A trial names the treble side's length. */
export const lengthRatioOf = (state: State): number =>
  (state.trial.length ?? mainScale(state)) / mainScale(state);

export function triedOf(state: State): Tried {
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
}

/** The state with some of its trial changed. Another string in hand leaves behind what was tried on the one before. */
export function withTrial(state: State, trial: Partial<Trial>): State {
  const next = { ...state, trial: { ...state.trial, ...trial } };
  const isOther = trial.string !== undefined && trial.string !== state.trial.string;
  return isOther
    ? withDrawn(next, Object.fromEntries(ofOneString.map((n) => [n, undefined])))
    : next;
}

/** The state with some of what drawings try for themselves changed; `undefined` takes a value back. */
export function withDrawn(
  state: State,
  values: Readonly<Partial<Record<DrawnName, number | undefined>>>,
): State {
  const entries = Object.entries({ ...state.trial.drawn, ...values }).filter(
    ([, value]) => value !== undefined,
  );
  const bare = withoutDrawn(state);
  return entries.length > 0
    ? { ...bare, trial: { ...bare.trial, drawn: Object.fromEntries(entries) as Drawn } }
    : bare;
}

/** The state with nothing tried out; the string in hand stays in hand. */
export const withoutTrial = (state: State): State => ({
  ...state,
  trial: { string: state.trial.string },
});

export const isTrying = ({ trial }: State): boolean =>
  trial.length !== undefined || trial.note !== undefined || trial.gauge !== undefined;

/** The state without what single drawings try: what a sheet to take along is made from. */
export function withoutDrawn(state: State): State {
  const trial = { ...state.trial };
  delete trial.drawn;
  return { ...state, trial };
}
