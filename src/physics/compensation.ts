/**
 * Where saddle and nut should stand so that the frets sound in tune.
 * Source: M. B. Anderson and R. G. Beausoleil, Journal of the Acoustical Society of America 156(1) 683 (2024); here the same
 * root mean square over the frets is made least by Gauss and Newton's method on the exact errors, not on their expansion.
 */
import { fretError, frettedPath, type Action, type StringResponse } from './intonation.ts';
import { inRange } from './guard.ts';

export interface Compensation {
  /** m, away from the frets */
  readonly saddleSetback: number;
  /** m, away from the frets; negative is towards them */
  readonly nutSetback: number;
  /** Cents left at each fret, from the first */
  readonly errors: readonly number[];
  /** Root mean square of them, cents */
  readonly rms: number;
}

type Setup = Omit<Action, 'saddleSetback' | 'nutSetback'>;

interface Asked extends Setup {
  readonly response: StringResponse;
  /** How many frets count; the first twelve when not given */
  readonly frets?: number;
}

const check = (frets: number) => inRange('frets', frets, { min: 2, max: 48, whole: true });

function errorsAt(asked: Asked, frets: number, saddleSetback: number, nutSetback: number) {
  const { response, frets: _, ...setup } = asked;
  return Array.from(
    { length: frets },
    (_, i) => fretError({ ...setup, response, saddleSetback, nutSetback, fret: i + 1 }).total,
  );
}

/** Step of the numeric derivatives, m: errors are all but linear in the setbacks, so any small one serves. */
const STEP = 1e-5;

const dot = (p: readonly number[], q: readonly number[]): number =>
  p.reduce((sum, value, i) => sum + value * (q[i] ?? 0), 0);

/**
 * Setbacks of saddle and nut in m that make the errors over the first frets least in root mean square; of the saddle alone when
 * `nut` is 'kept'. Throws RangeError naming an argument that lies outside. Source: see the head of this file.
 */
export function compensate({
  nut = 'moved',
  ...asked
}: Asked & { readonly nut?: 'moved' | 'kept' }): Compensation {
  const frets = check(asked.frets ?? 12);
  let [saddle, shift] = [0, 0];
  for (let round = 0; round < 20; round += 1) {
    const at = (s: number, n: number) => errorsAt(asked, frets, s, n);
    const errors = at(saddle, shift);
    const slopeOf = (up: readonly number[], down: readonly number[]) =>
      up.map((value, i) => (value - (down[i] ?? 0)) / (2 * STEP));
    const bySaddle = slopeOf(at(saddle + STEP, shift), at(saddle - STEP, shift));
    const byNut = slopeOf(at(saddle, shift + STEP), at(saddle, shift - STEP));
    const [ss, sn, nn] = [dot(bySaddle, bySaddle), dot(bySaddle, byNut), dot(byNut, byNut)];
    const [es, en] = [dot(errors, bySaddle), dot(errors, byNut)];
    const det = ss * nn - sn * sn;
    const [ds, dn] =
      nut === 'kept' ? [-es / ss, 0] : [(sn * en - nn * es) / det, (sn * es - ss * en) / det];
    saddle += ds;
    shift += dn;
    if (Math.abs(ds) + Math.abs(dn) < 1e-12) break;
  }
  const errors = errorsAt(asked, frets, saddle, shift);
  const rms = Math.sqrt(dot(errors, errors) / frets);
  return { saddleSetback: saddle, nutSetback: shift, errors, rms };
}

/**
 * The simple rule, in m: the saddle back by the string's end length, against stiffness, and the nut forward by half of stretch
 * constant times mean strain times scale, against stretch. Throws RangeError as `compensate` does.
 * Source: Anderson and Beausoleil 2024, their first estimate.
 */
export function simpleCompensation(asked: Asked): {
  readonly saddleSetback: number;
  readonly nutSetback: number;
} {
  const frets = check(asked.frets ?? 12);
  const { response, frets: _, ...setup } = asked;
  let sum = 0;
  for (let fret = 1; fret <= frets; fret += 1) sum += frettedPath({ ...setup, fret }).strain;
  const mean = sum / frets;
  return {
    saddleSetback: response.endLength,
    nutSetback: (-response.stretch * mean * asked.scaleLength) / 2,
  };
}
