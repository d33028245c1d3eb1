/** The scales that chapter 9 tries on the two instruments: a handle tries, and a button keeps. */
import type { Drawn } from './drawn.ts';
import { limits } from './limits.ts';
import { compared, drawnSide, twinOf, unpaired, type Side } from './pair.ts';
import type { State } from './schema.ts';

/** Whether a scale of one of the two is tried. */
export const triesScale = ({ trial: { drawn } }: State): boolean =>
  Object.values(drawnSide).some((name) => drawn?.[name] !== undefined);

/** The state with the treble scale of one of the two tried at `treble` m; back at the instrument's own, nothing is tried. */
export function withTreble(state: State, side: Side, treble: number): State {
  const own = side === 'mine' || !unpaired(state) ? state[side] : twinOf(state.mine);
  const isOwn = Math.abs(treble - own.scale.treble) < 5e-7;
  return withScales(state, {
    [side]: isOwn ? undefined : Math.min(limits.scale.max, Math.max(limits.scale.min, treble)),
  });
}

/** The state with neither scale tried. */
export const withoutScales = (state: State): State =>
  withScales(state, { mine: undefined, other: undefined });

function withScales(state: State, scales: Partial<Record<Side, number | undefined>>): State {
  const drawn: Record<string, number | undefined> = { ...state.trial.drawn };
  for (const [side, treble] of Object.entries(scales)) {
    const name = drawnSide[side as Side];
    if (treble === undefined) delete drawn[name];
    else drawn[name] = treble;
  }
  const trial = { ...state.trial };
  delete trial.drawn;
  return {
    ...state,
    trial: Object.keys(drawn).length > 0 ? { ...trial, drawn: drawn as Drawn } : trial,
  };
}

/** The two instruments with the scales that were tried on them; a twin whose scale is kept becomes the one to be strung. */
export function keptScales(state: State): State {
  const { mine, other } = compared(state);
  const { drawn } = state.trial;
  const next = withoutScales(state);
  const others = unpaired(state) ? twinOf(state.mine) : state.other;
  return {
    ...next,
    mine: drawn?.[drawnSide.mine] === undefined ? state.mine : { ...state.mine, scale: mine.scale },
    other: drawn?.[drawnSide.other] === undefined ? state.other : { ...others, scale: other.scale },
  };
}
