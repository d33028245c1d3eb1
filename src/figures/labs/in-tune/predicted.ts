/** What chapter 14's model leaves over at each fret, with the saddle where it serves best, and how far that can be trusted. */
import { actionAt, NUT_HEIGHT } from '../../../instrument/action.ts';
import { doubtsOf } from '../../../instrument/doubts.ts';
import { intoned } from '../../../instrument/intoned.ts';
import {
  compensate,
  fretError,
  fretPosition,
  fromHalfWidth,
  material,
  propagate,
  type Action,
  type Construction,
} from '../../../physics/index.ts';
import type { LabString } from '../kit/strings.ts';

/** m, half-widths: a height read with a rule, the depth of a nut's slot, where a fret was sawn; common practice, no source */
const READ = { height: 2e-4, nut: 1e-4, place: 1e-4 } as const;
/** Relative, half-width: of the stretch of a string that was never stretched on a bench */
const UNKNOWN_STRETCH = 0.15;

/** Relative standard uncertainty of E A/T: a gauge that is off changes both alike, a wound string's core does not. */
function stretchDoubt(c: Construction): number {
  if (c.kind === 'measured') return fromHalfWidth(UNKNOWN_STRETCH);
  const { modulus } = material(c.kind === 'wound' ? c.core.material : c.material);
  const core = c.kind === 'wound' ? (2 * (doubtsOf(c).coreDiameter ?? 0)) / c.core.diameter : 0;
  return Math.hypot(fromHalfWidth(modulus.tolerance / modulus.value), core);
}

type Input = 'height' | 'nut' | 'stretch' | 'place';

export interface Model {
  /** m by which the saddle stands behind the scale length where it serves best */
  readonly setback: number;
  /** Cents above the even step, with what the heights, the frets and the string's stretch leave open, each by itself too */
  readonly at: (fret: number) => ReturnType<typeof propagate<Input>>;
  /** Cents at the twelfth fret for each m that the saddle goes back */
  readonly perMetre: number;
}

/** Of a string that lies `height` m over the twelfth fret; undefined where the model can't say anything of it. */
export function modelOf({ pull }: LabString, height: number): Model | undefined {
  const known = intoned(pull);
  if (!known) return undefined;
  const scaleLength = pull.speakingLength;
  const shift = stretchDoubt(pull.construction);
  const lies = (at: Readonly<Record<Input, number>>): Action => ({
    ...actionAt(scaleLength, at.height),
    nutHeight: at.nut,
  });
  const response = (at: Readonly<Record<Input, number>>) => ({
    ...known.response,
    stretch: known.response.stretch * at.stretch,
  });
  const places = new Map<string, number>();
  /** Where the saddle serves best; found once for each set of heights */
  const best = (at: Readonly<Record<Input, number>>): number => {
    const key = [at.height, at.nut, at.stretch].join();
    const found =
      places.get(key) ??
      compensate({ ...lies(at), response: response(at), nut: 'kept' }).saddleSetback;
    places.set(key, found);
    return found;
  };
  const error = (at: Readonly<Record<Input, number>>, fret: number, saddleSetback: number) =>
    fretError({ ...lies(at), response: response(at), fret, saddleSetback }).total;
  const usual = { height, nut: NUT_HEIGHT, stretch: 1, place: 0 };
  const setback = best(usual);
  const step = 1e-4;
  return {
    setback,
    perMetre: (error(usual, 12, setback + step) - error(usual, 12, setback - step)) / (2 * step),
    at: (fret) => {
      const ahead = scaleLength - fretPosition({ scaleLength, fret });
      return propagate(
        (at) => error(at, fret, best(at)) + 1200 * Math.log2(ahead / (ahead - at.place)),
        {
          height: { value: usual.height, uncertainty: fromHalfWidth(READ.height) },
          nut: { value: usual.nut, uncertainty: fromHalfWidth(READ.nut) },
          stretch: { value: 1, uncertainty: shift },
          place: { value: 0, uncertainty: fromHalfWidth(READ.place) },
        },
      );
    },
  };
}
