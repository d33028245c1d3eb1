/**
 * What all strings together ask of neck and bridge, and how springs hold a bridge that floats between them.
 * Source: statics: forces add along the neck, moments balance about the pivot, springs follow Hooke's law.
 */
import { inRange, tensionRange } from './guard.ts';

/** Sum in N of the strings' pulls on neck and bridge. Throws RangeError naming the pull that lies outside. */
export function totalPull(tensions: readonly number[]): number {
  return tensions.reduce((sum, t, i) => sum + inRange(`tensions[${i}]`, t, tensionRange), 0);
}

/** Change of the whole pull against a reference: in N, and relative (0.05 is five per cent more). Throws RangeError as `totalPull`. */
export function loadChange({
  tensions,
  reference,
}: {
  tensions: readonly number[];
  reference: readonly number[];
}): { readonly difference: number; readonly relative: number } {
  const [now, was] = [totalPull(tensions), totalPull(reference)];
  inRange('reference.length', reference.length, { min: 1, whole: true });
  return { difference: now - was, relative: now / was - 1 };
}

/**
 * Force in N that a string bent over a saddle or nut by `angle` radians presses on it with, 2 T sin(angle/2), friction left out.
 * Throws RangeError naming an argument that lies outside. Source: resolution of the two pulls.
 */
export function saddleForce({ tension, angle }: { tension: number; angle: number }): number {
  inRange('tension', tension, tensionRange);
  inRange('angle', angle, { min: 0, max: Math.PI, unit: 'rad' });
  return 2 * tension * Math.sin(angle / 2);
}

/** A bridge on a pivot, with springs behind it. Every number is the instrument's own, measured. */
export interface SprungBridge {
  /** Distance from the pivot to the strings at the saddle, square to their pull, m */
  readonly stringArm: number;
  /** Distance from the pivot to the springs' hooks, square to their pull, m */
  readonly springArm: number;
  /** Of one spring, N/m */
  readonly rate: number;
  /** Force at which one spring starts to open, N; none when not given */
  readonly preload?: number;
  readonly count: number;
}

const armRange = { min: 0, open: true, max: 1, unit: 'm' };

function checked(bridge: SprungBridge): Required<SprungBridge> {
  inRange('stringArm', bridge.stringArm, armRange);
  inRange('springArm', bridge.springArm, armRange);
  inRange('rate', bridge.rate, { min: 0, open: true, max: 1e6, unit: 'N/m' });
  inRange('count', bridge.count, { min: 1, max: 20, whole: true });
  const preload = inRange('preload', bridge.preload ?? 0, { min: 0, max: 1e4, unit: 'N' });
  return { ...bridge, preload };
}

export interface Balance {
  /** Of all springs together, N */
  readonly springForce: number;
  /** Of each spring beyond its closed length, m; negative when that many springs can't be balanced by this pull, even closed */
  readonly extension: number;
  readonly holds: boolean;
}

/**
 * Springs' force and extension that hold the bridge level against a whole pull of `pull` N.
 * Throws RangeError naming an argument that lies outside. Source: moments about the pivot and Hooke's law.
 */
export function bridgeBalance({ pull, ...bridge }: SprungBridge & { pull: number }): Balance {
  inRange('pull', pull, tensionRange);
  const { stringArm, springArm, rate, preload, count } = checked(bridge);
  const springForce = (pull * stringArm) / springArm;
  const extension = (springForce / count - preload) / rate;
  return { springForce, extension, holds: extension >= 0 };
}

/**
 * How many turns of the springs' claw bring the bridge level again when the whole pull goes from `from` to `to` N: positive
 * tightens. `pitch` is the claw screws' travel a turn, m. Throws RangeError as `bridgeBalance`. Source: as `bridgeBalance`.
 */
export function turnsToLevel({
  from,
  to,
  pitch,
  ...bridge
}: SprungBridge & { from: number; to: number; pitch: number }): number {
  inRange('from', from, tensionRange);
  inRange('to', to, tensionRange);
  inRange('pitch', pitch, { min: 0, open: true, max: 0.01, unit: 'm' });
  const { stringArm, springArm, rate, count } = checked(bridge);
  return ((to - from) * stringArm) / (springArm * count * rate * pitch);
}
