/**
 * A string pushed sideways by a finger.
 *
 * The finger stands `at` from the saddle and `b` from the nut; pushed aside by y, the two parts grow to hypot(at, y) and
 * hypot(b, y). The string stretches by what they gain, over the whole length that can share it, and pulls harder by
 * E A times the strain; its mass stays, so it thins. The part between finger and saddle sounds.
 * Source: plane geometry and Hooke's law. At the middle with held ends it is the formula of Grimes, PLoS ONE 9(7) e102088 (2014).
 * Idealised: no friction at nut, frets or saddle, a neck that doesn't give, and the stretch of tuning itself left out of the
 * reference length, which makes the change of pull small by the strain at rest, under one per cent in steel.
 */
import { axialStiffness, type Construction } from './construction.ts';
import { inPositive, inRange, speakingLengthRange, tensionRange } from './guard.ts';

/** Lengths beyond nut and saddle: held, so that they don't share the stretch, or slipping freely, their lengths given in m. */
export type Ends = 'held' | { readonly beyondNut: number; readonly beyondSaddle: number };

export interface Fingered {
  readonly construction: Construction;
  /** m, from nut to saddle */
  readonly speakingLength: number;
  /** N, before the push */
  readonly tension: number;
  /** m, from the saddle to the finger */
  readonly at: number;
  /** Held when not given */
  readonly ends?: Ends | undefined;
}

export interface Bend {
  /** Change of pitch of the part that sounds, cents */
  readonly rise: number;
  /** Sideways force of the finger, N */
  readonly push: number;
  /** Stretch as a share of the length that shares it */
  readonly strain: number;
  /** N, along the string while it is held aside */
  readonly tension: number;
}

/** What stays the same while the travel changes. */
interface Frame {
  readonly a: number;
  readonly b: number;
  readonly tension: number;
  readonly stiffness: number;
  readonly shared: number;
}

const CENTS = 1200 / Math.LN2;
const beyondRange = { min: 0, max: 10, unit: 'm' };

function frame({ construction, speakingLength, tension, at, ends = 'held' }: Fingered): Frame {
  inPositive('speakingLength', speakingLength, speakingLengthRange);
  inPositive('tension', tension, tensionRange);
  if (!(at > 0 && at < speakingLength)) {
    throw new RangeError(
      `at is ${at}; permitted: more than 0, less than the speaking length, ${speakingLength} m`,
    );
  }
  let shared = speakingLength;
  if (ends !== 'held') {
    shared += inRange('ends.beyondNut', ends.beyondNut, beyondRange);
    shared += inRange('ends.beyondSaddle', ends.beyondSaddle, beyondRange);
  }
  const stiffness = axialStiffness(construction, tension);
  return { a: at, b: speakingLength - at, tension, stiffness, shared };
}

/** A segment of `length` m whose end goes aside by `y` m. */
const aslant = (length: number, y: number): number => Math.sqrt(length * length + y * y);
/** What it gains; written so that small travels keep their digits. */
const gain = (length: number, y: number): number => (y * y) / (aslant(length, y) + length);

/** Rise in nepers, natural units of pitch: ln(f'/f), with f = sqrt(T/mu)/(2 a) before and after. */
function nepers({ a, b, tension, stiffness, shared }: Frame, y: number): number {
  const gained = gain(a, y);
  const strain = (gained + gain(b, y)) / shared;
  const tighter = Math.log1p((stiffness / tension) * strain);
  return 0.5 * (tighter + Math.log1p(strain)) - Math.log1p(gained / a);
}

const pullAt = (f: Frame, y: number): number =>
  f.tension + (f.stiffness * (gain(f.a, y) + gain(f.b, y))) / f.shared;

const pushAt = (f: Frame, y: number): number =>
  pullAt(f, y) * (y / aslant(f.a, y) + y / aslant(f.b, y));

/**
 * Rise in cents, push in N, strain and pull in N of a string pushed aside by `travel` m.
 * Throws RangeError naming what lies outside: `travel` from 0 to the speaking length, `at` between nut and saddle,
 * `axialStiffness` when a measured string does not name it. Source: see the head of this file.
 */
export function bend(asked: Fingered & { readonly travel: number }): Bend {
  const f = frame(asked);
  const y = inRange('travel', asked.travel, { min: 0, max: asked.speakingLength, unit: 'm' });
  return {
    rise: CENTS * nepers(f, y),
    push: pushAt(f, y),
    strain: (gain(f.a, y) + gain(f.b, y)) / f.shared,
    tension: pullAt(f, y),
  };
}

/** Newton's method, kept inside a bracket that bisection narrows when a step would leave it. Undefined when out of reach. */
function travelFor(f: Frame, target: number): number | undefined {
  if (target === 0) return 0;
  const { a, b, shared } = f;
  const stretch = f.stiffness / f.tension;
  const farthest = a + b;
  let low = 0;
  let high = farthest;
  // The first step is the law of small travels: the rise grows with the travel squared.
  const curvature = ((stretch + 1) / shared) * (1 / a + 1 / b) - 2 / (a * a);
  let y = curvature > 0 ? Math.min(high, 2 * Math.sqrt(target / curvature)) : high / 2;
  for (let step = 0; step < 100; step += 1) {
    // As `nepers`, and its slope from the same roots: this loop is what a bend costs.
    const long = aslant(a, y);
    const other = aslant(b, y);
    const gained = (y * y) / (long + a);
    const strain = (gained + (y * y) / (other + b)) / shared;
    const risen =
      0.5 * (Math.log1p(stretch * strain) + Math.log1p(strain)) - Math.log1p(gained / a);
    const growth = (y / long + y / other) / shared;
    const slope =
      0.5 * growth * (1 / (1 / stretch + strain) + 1 / (1 + strain)) - y / (long * long);
    if (risen > target) high = y;
    else low = y;
    let next = y - (risen - target) / slope;
    if (!(next > low && next < high)) {
      // Nothing has yet shown that the far end is far enough.
      if (high === farthest && nepers(f, farthest) < target) return undefined;
      next = (low + high) / 2;
    }
    if (Math.abs(next - y) <= 1e-15 * farthest) return next;
    y = next;
  }
  return y;
}

const riseRange = { min: 0, max: 12_000, unit: 'cents' };

/**
 * Travel in m and push in N that raise the pitch by `rise` cents: the inverse of `bend`.
 * Throws RangeError naming `rise` when no travel up to the speaking length reaches it, and as `bend` does.
 * Source: `bend`, inverted by Newton's method inside a bracket.
 */
export function bendTo(asked: Fingered & { readonly rise: number }): {
  readonly travel: number;
  readonly push: number;
} {
  const f = frame(asked);
  const travel = travelFor(f, inRange('rise', asked.rise, riseRange) / CENTS);
  if (travel === undefined) {
    const most = CENTS * nepers(f, f.a + f.b);
    throw new RangeError(
      `rise is ${asked.rise}; permitted: what this string can reach here, ${most} cents`,
    );
  }
  return { travel, push: pushAt(f, travel) };
}

/** As `bendTo`, but undefined where the rise can't be reached or a measured string doesn't name its axial stiffness. */
export function reachable(
  asked: Fingered & { readonly rise: number },
): { readonly travel: number; readonly push: number } | undefined {
  const { construction: c } = asked;
  if (c.kind === 'measured' && c.axialStiffness === undefined) return undefined;
  const f = frame(asked);
  const travel = travelFor(f, inRange('rise', asked.rise, riseRange) / CENTS);
  return travel === undefined ? undefined : { travel, push: pushAt(f, travel) };
}
