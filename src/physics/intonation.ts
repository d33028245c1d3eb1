/**
 * How sharp a fretted note goes: by its longer path, by its thinner string, by its tighter string, and by its stiff end.
 *
 * A string runs from the saddle down to the fret, on at the same slope to the finger behind it, and up to the nut. Its end at
 * the fret or nut is clamped, the one at the saddle pinned, so that stiffness raises the fundamental by 1 + b + (1 + pi²/2) b²,
 * where b is sqrt(E I/T)/L. Source: M. B. Anderson and R. G. Beausoleil, Journal of the Acoustical Society of America 156(1)
 * 683 (2024): the decomposition and every equation; the model is theirs for nylon and holds for any string whose stretch is linear.
 */
import { axialStiffness, bendingStiffness, type Construction } from './construction.ts';
import { fretPosition } from './frets.ts';
import { inRange, speakingLengthRange, tensionRange } from './guard.ts';
import { endLength } from './stiffness.ts';

/** Side view of one string, all in m; heights are of the string above the plane of the frets' tops. */
export interface Action {
  readonly scaleLength: number;
  readonly nutHeight: number;
  readonly saddleHeight: number;
  /** How far behind the fret the finger bends the string; none when not given */
  readonly fingerBehind?: number;
  /** How far the saddle is moved away from the frets; none when not given */
  readonly saddleSetback?: number;
  /** How far the nut is moved away from the frets, negative when towards them; none when not given */
  readonly nutSetback?: number;
}

/** What of a string matters here: its stretch constant E A/T, without unit, and its end length sqrt(E I/T), m. */
export interface StringResponse {
  readonly stretch: number;
  readonly endLength: number;
}

/** Cents by cause, each against equal temperament from the open string; `total` is their sum. */
export interface FretError {
  readonly length: number;
  readonly mass: number;
  readonly tension: number;
  readonly stiffness: number;
  readonly total: number;
}

const heightRange = { min: 0, max: 0.1, unit: 'm' };
/** Stretch constant and end length in m beyond which a string hangs rather than sounds, and the model has nothing to say. */
export const MOST_STRETCH = 1e5;
export const MOST_END_LENGTH = 0.1;

/** How far either end of a string may be moved; m */
export const FARTHEST_SETBACK = 0.05;
const setbackRange = { min: -FARTHEST_SETBACK, max: FARTHEST_SETBACK, unit: 'm' };
const cents = (ratio: number): number => 1200 * Math.log2(ratio);

/** Stretch constant and end length of a string under `tension` N. Throws RangeError as `axialStiffness` and `bendingStiffness` do. */
export function responseOf({
  construction,
  tension,
}: {
  construction: Construction;
  tension: number;
}): StringResponse {
  inRange('tension', tension, tensionRange);
  return {
    stretch: axialStiffness(construction, tension) / tension,
    endLength: endLength({ bendingStiffness: bendingStiffness(construction, tension), tension }),
  };
}

/** Lengths in m that fretting makes: of the open string, of the part that sounds, and its stretch as a share of the open length. */
export function frettedPath({ fret, ...action }: Action & { readonly fret: number }): {
  readonly open: number;
  readonly sounding: number;
  readonly strain: number;
} {
  const { scaleLength, nutHeight, saddleHeight } = action;
  const { fingerBehind = 0, saddleSetback = 0, nutSetback = 0 } = action;
  inRange('scaleLength', scaleLength, speakingLengthRange);
  inRange('nutHeight', nutHeight, heightRange);
  inRange('saddleHeight', saddleHeight, heightRange);
  inRange('saddleSetback', saddleSetback, setbackRange);
  inRange('nutSetback', nutSetback, setbackRange);
  const behind = fretPosition({ scaleLength, fret: inRange('fret', fret, { min: 0, open: true }) });
  const room = behind + nutSetback;
  inRange('fingerBehind', fingerBehind, { min: 0, max: room, unit: 'm' });
  const ahead = scaleLength - behind + saddleSetback;
  const open = Math.hypot(scaleLength + saddleSetback + nutSetback, saddleHeight - nutHeight);
  const sounding = Math.hypot(ahead, saddleHeight);
  const rest =
    (sounding / ahead) * fingerBehind +
    Math.hypot(room - fingerBehind, nutHeight + (saddleHeight / ahead) * fingerBehind);
  return { open, sounding, strain: (sounding + rest - open) / open };
}

const clamped = (b: number): number => 1 + b + (1 + Math.PI ** 2 / 2) * b * b;

/**
 * Error in cents of the note at a fret (1 upwards), by cause and in all, when the open string is in tune.
 * Throws RangeError naming an argument that lies outside. Source: Anderson and Beausoleil 2024.
 */
export function fretError({
  fret,
  response,
  ...action
}: Action & { readonly fret: number; readonly response: StringResponse }): FretError {
  inRange('response.stretch', response.stretch, { min: 0, max: MOST_STRETCH });
  inRange('response.endLength', response.endLength, { min: 0, max: MOST_END_LENGTH, unit: 'm' });
  const { open, sounding, strain } = frettedPath({ fret, ...action });
  const tighter = 1 + response.stretch * strain;
  const length = cents(open / sounding) - 100 * fret;
  const mass = cents(1 + strain) / 2;
  const tension = cents(tighter) / 2;
  const stiffness = cents(
    clamped(response.endLength / Math.sqrt(tighter) / sounding) /
      clamped(response.endLength / open),
  );
  return { length, mass, tension, stiffness, total: length + mass + tension + stiffness };
}
