/**
 * Where saddle and nut should stand so that the frets sound in tune.
 * Source: M. B. Anderson and R. G. Beausoleil, Journal of the Acoustical Society of America 156(1) 683 (2024); here the same
 * root mean square over the frets is made least by Newton's method on the exact errors, not on their expansion.
 */
import {
  FARTHEST_SETBACK,
  fretError,
  frettedPath,
  type Action,
  type StringResponse,
} from './intonation.ts';
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
  return Array.from(
    { length: frets },
    (_, i) => fretError({ ...asked, saddleSetback, nutSetback, fret: i + 1 }).total,
  );
}

/** Step of the numeric derivatives, m: a hundredth of the least that a saddle is ever moved by. */
const STEP = 2e-5;

/** Newton's step towards the least of f, from central differences; straight downhill where f doesn't curve upwards. */
function newtonStep(f: (s: number, n: number) => number, s: number, n: number): [number, number] {
  const here = f(s, n);
  const [ahead, behind] = [f(s + STEP, n), f(s - STEP, n)];
  const [up, down] = [f(s, n + STEP), f(s, n - STEP)];
  const across =
    f(s + STEP, n + STEP) - f(s + STEP, n - STEP) - f(s - STEP, n + STEP) + f(s - STEP, n - STEP);
  const [gs, gn] = [(ahead - behind) / (2 * STEP), (up - down) / (2 * STEP)];
  const [hss, hnn] = [(ahead - 2 * here + behind) / STEP ** 2, (up - 2 * here + down) / STEP ** 2];
  const hsn = across / (4 * STEP ** 2);
  const det = hss * hnn - hsn * hsn;
  if (hss > 0 && det > 0) return [(hsn * gn - hnn * gs) / det, (hsn * gs - hss * gn) / det];
  const size = Math.abs(hss) + Math.abs(hnn);
  return [-gs / size, -gn / size];
}

const within = (setback: number): number =>
  Math.min(FARTHEST_SETBACK - STEP, Math.max(STEP - FARTHEST_SETBACK, setback));

/** Newton's step in the saddle alone. */
function saddleStep(f: (s: number, n: number) => number, s: number): [number, number] {
  const [ahead, here, behind] = [f(s + STEP, 0), f(s, 0), f(s - STEP, 0)];
  const curvature = Math.abs(ahead - 2 * here + behind) / STEP ** 2;
  return [-(ahead - behind) / (2 * STEP) / curvature, 0];
}

/**
 * Setbacks of saddle and nut in m that make the errors over the first frets least in root mean square; of the saddle alone when
 * `nut` is 'kept'. Throws RangeError naming an argument that lies outside. Source: see the head of this file.
 */
export function compensate({
  nut = 'moved',
  ...asked
}: Asked & { readonly nut?: 'moved' | 'kept' }): Compensation {
  const frets = check(asked.frets ?? 12);
  const squares = (s: number, n: number) =>
    errorsAt(asked, frets, s, n).reduce((sum, e) => sum + e * e, 0);
  let [saddle, shift] = [0, 0];
  let least = squares(saddle, shift);
  for (let round = 0; round < 50; round += 1) {
    let [ds, dn] =
      nut === 'kept' ? saddleStep(squares, saddle) : newtonStep(squares, saddle, shift);
    // Beyond the model's reach the best place is at its end.
    ds = within(saddle + ds) - saddle;
    dn = within(shift + dn) - shift;
    // A step that makes things worse was too long.
    let next = squares(saddle + ds, shift + dn);
    while (next > least && Math.abs(ds) + Math.abs(dn) > 1e-10) {
      [ds, dn] = [ds / 2, dn / 2];
      next = squares(saddle + ds, shift + dn);
    }
    if (!(next < least)) break;
    [saddle, shift, least] = [saddle + ds, shift + dn, next];
  }
  const errors = errorsAt(asked, frets, saddle, shift);
  return { saddleSetback: saddle, nutSetback: shift, errors, rms: Math.sqrt(least / frets) };
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
  let sum = 0;
  for (let fret = 1; fret <= frets; fret += 1) sum += frettedPath({ ...asked, fret }).strain;
  const mean = sum / frets;
  return {
    saddleSetback: asked.response.endLength,
    nutSetback: (-asked.response.stretch * mean * asked.scaleLength) / 2,
  };
}
