/**
 * A capo on one string: the speaking length it leaves, the note, and the little that pressing the string down adds to its pull;
 * beside it the same note reached by the peg. The string's path is that of a fretted one, its bending stiffness left out.
 */
import { actionAt, usualHeightOf } from '../../../instrument/action.ts';
import type { Pull } from '../../../instrument/pulls.ts';
import { stretchKnown } from '../../../instrument/pushed.ts';
import {
  axialStiffness,
  fretError,
  frettedPath,
  fretPosition,
  fromMillimetres,
  MOST_STRETCH,
  stoppedLength,
  strainState,
  tensionRatio,
  type Action,
  type Strain,
} from '../../../physics/index.ts';

export const MOST_FRETS = 12;
/** The capo's pad stands so far behind its fret, or in the middle between two frets where they are nearer than that. */
const BEHIND = fromMillimetres(6);

/** Height of the string over the twelfth fret, m: common practice, higher where the string is soft and swings wide. */
export const heightOf = ({
  gauge,
  speakingLength,
}: Pick<Pull, 'gauge' | 'speakingLength'>): number => usualHeightOf(gauge.family, speakingLength);

export const actionOf = (pull: Pick<Pull, 'gauge' | 'speakingLength'>): Action =>
  actionAt(pull.speakingLength, heightOf(pull));

/** How far behind its fret the pad stands, m; without frets the pad itself ends the string. */
export function padBehind(scaleLength: number, fret: number, fretless = false): number {
  if (fretless) return 0;
  const space = fretPosition({ scaleLength, fret }) - fretPosition({ scaleLength, fret: fret - 1 });
  return Math.min(BEHIND, space / 2);
}

export interface Clamped {
  readonly fret: number;
  /** m, from the fret to the saddle's place */
  readonly length: number;
  /** Hz: of the equal step, and as it sounds where the stretch is known */
  readonly tempered: number;
  readonly frequency: number;
  /** Cents above the equal step; undefined where the string's stretch is not known, or it hangs slack */
  readonly sharp: number | undefined;
  /** Relative change of the pull by pressing the string down; undefined as above */
  readonly stretched: number | undefined;
  /** The same note on the open string, by the peg: its pull over the own one, and what that does to the string */
  readonly peg: { readonly ratio: number; readonly strain: Strain };
}

/** Its stretch constant; undefined where nobody knows it, and where it hangs too slack for the model. */
function stretchOf({ construction, tension }: Pull): number | undefined {
  if (!stretchKnown({ construction })) return undefined;
  const stretch = axialStiffness(construction, tension) / tension;
  return stretch <= MOST_STRETCH ? stretch : undefined;
}

/** A capo behind `fret`, or where that would be; 0 is none. */
export function clamped(pull: Pull, fret: number, fretless = false): Clamped {
  const { speakingLength, share } = pull;
  const length = stoppedLength({ scaleLength: speakingLength, fret });
  const tempered = pull.frequency * 2 ** (fret / 12);
  const ratio = tensionRatio({ frequency: tempered / pull.frequency });
  const peg = { ratio, strain: strainState(share === undefined ? undefined : share * ratio) };
  const plain = { fret, length, tempered, peg };
  const stretch = stretchOf(pull);
  if (stretch === undefined)
    return { ...plain, frequency: tempered, sharp: undefined, stretched: undefined };
  if (fret === 0) return { ...plain, frequency: tempered, sharp: 0, stretched: 0 };
  const fingerBehind = padBehind(speakingLength, fret, fretless);
  const action = { ...actionOf(pull), fingerBehind, fret };
  const { total } = fretError({ ...action, response: { stretch, endLength: 0 } });
  return {
    ...plain,
    frequency: tempered * 2 ** (total / 1200),
    sharp: total,
    stretched: stretch * frettedPath(action).strain,
  };
}
