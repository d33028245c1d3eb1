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
import { inRange, speakingLengthRange, tensionRange } from './guard.ts';

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
  readonly ends?: Ends;
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
  inRange('speakingLength', speakingLength, speakingLengthRange);
  inRange('tension', tension, tensionRange);
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
  const stiffness = axialStiffness(construction);
  return { a: at, b: speakingLength - at, tension, stiffness, shared };
}

/** What a segment of `length` m gains when its end goes aside by `y` m; written so that small travels keep their digits. */
const gain = (length: number, y: number): number => (y * y) / (Math.hypot(length, y) + length);

/** Rise in nepers, natural units of pitch: ln(f'/f), with f = sqrt(T/mu)/(2 a) before and after. */
function nepers({ a, b, tension, stiffness, shared }: Frame, y: number): number {
  const strain = (gain(a, y) + gain(b, y)) / shared;
  return (
    0.5 * (Math.log1p((stiffness / tension) * strain) + Math.log1p(strain)) -
    Math.log1p(gain(a, y) / a)
  );
}

function slope({ a, b, tension, stiffness, shared }: Frame, y: number): number {
  const [long, other] = [Math.hypot(a, y), Math.hypot(b, y)];
  const strain = (gain(a, y) + gain(b, y)) / shared;
  const growth = (y / long + y / other) / shared;
  return 0.5 * growth * (1 / (tension / stiffness + strain) + 1 / (1 + strain)) - y / (long * long);
}

function state(f: Frame, y: number): Bend {
  const strain = (gain(f.a, y) + gain(f.b, y)) / f.shared;
  const tension = f.tension + f.stiffness * strain;
  const push = tension * (y / Math.hypot(f.a, y) + y / Math.hypot(f.b, y));
  return { rise: CENTS * nepers(f, y), push, strain, tension };
}

/**
 * Rise in cents, push in N, strain and pull in N of a string pushed aside by `travel` m.
 * Throws RangeError naming what lies outside: `travel` from 0 to the speaking length, `at` between nut and saddle,
 * `axialStiffness` when a measured string does not name it. Source: see the head of this file.
 */
export function bend({ travel, ...string }: Fingered & { readonly travel: number }): Bend {
  const f = frame(string);
  inRange('travel', travel, { min: 0, max: string.speakingLength, unit: 'm' });
  return state(f, travel);
}

/** Newton's method, kept inside a bracket that bisection narrows when a step would leave it. Undefined when out of reach. */
function travelFor(f: Frame, target: number): number | undefined {
  if (target === 0) return 0;
  let low = 0;
  let high = f.a + f.b;
  if (nepers(f, high) < target) return undefined;
  // The first step is the law of small travels: the rise grows with the travel squared.
  const curvature = ((f.stiffness / f.tension + 1) / f.shared) * (1 / f.a + 1 / f.b) - 2 / f.a ** 2;
  let y = curvature > 0 ? Math.min(high, 2 * Math.sqrt(target / curvature)) : high / 2;
  for (let step = 0; step < 100; step += 1) {
    const miss = nepers(f, y) - target;
    if (miss > 0) high = y;
    else low = y;
    const rate = slope(f, y);
    let next = y - miss / rate;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (Math.abs(next - y) <= 1e-15 * (f.a + f.b) || Math.abs(next - y) <= 4e-16 * y) return next;
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
export function bendTo({ rise, ...string }: Fingered & { readonly rise: number }): {
  readonly travel: number;
  readonly push: number;
} {
  const f = frame(string);
  const travel = travelFor(f, inRange('rise', rise, riseRange) / CENTS);
  if (travel === undefined) {
    const most = CENTS * nepers(f, f.a + f.b);
    throw new RangeError(
      `rise is ${rise}; permitted: what this string can reach here, ${most} cents`,
    );
  }
  return { travel, push: state(f, travel).push };
}

/** As `bendTo`, but undefined where the rise can't be reached or a measured string doesn't name its axial stiffness. */
export function reachable({
  rise,
  ...string
}: Fingered & { readonly rise: number }):
  { readonly travel: number; readonly push: number } | undefined {
  const { construction: c } = string;
  if (c.kind === 'measured' && c.axialStiffness === undefined) return undefined;
  const f = frame(string);
  const travel = travelFor(f, inRange('rise', rise, riseRange) / CENTS);
  return travel === undefined ? undefined : { travel, push: state(f, travel).push };
}
