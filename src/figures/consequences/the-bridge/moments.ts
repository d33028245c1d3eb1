/** Who turns the bridge which way about its knife edge, and by how many turns of the claw it comes level. */
import { bridgeBalance, turnsToLevel } from '../../../physics/index.ts';
import type { Measured } from '../../../instrument/bench-bridge.ts';

export interface Moments {
  /** The strings' and the springs', N m; they turn opposite ways */
  readonly strings: number;
  readonly springs: number;
  /** What is left over, as a share of the strings' own at the reference; positive tips the bridge towards the neck */
  readonly excess: number;
  /** Force of all springs, N, and stretch of each, m, at this place of the claw with the bridge held level */
  readonly force: number;
  readonly extension: number;
  /** Turns from here that bring it level; positive tightens */
  readonly toLevel: number;
  /** Whether so many springs can be balanced by this pull at all */
  readonly holds: boolean;
}

/**
 * With the claw `turns` from where it balances the pull `reference` (N) on three springs, and `pull` N on the strings now.
 * The claw's zero stays where it is when springs are hung in or taken out, as on the bench.
 */
export function momentsOf(
  bridge: Measured,
  {
    reference,
    pull,
    turns,
    zero,
  }: {
    reference: number;
    pull: number;
    turns: number;
    /** The number of springs that the claw's zero was set with */
    zero: number;
  },
): Moments {
  const start = bridgeBalance({ ...bridge, count: zero, pull: reference }).extension;
  const level = bridgeBalance({ ...bridge, pull });
  const extension = start + turns * bridge.pitch;
  // A closed spring neither pulls nor pushes.
  const force = extension > 0 ? bridge.count * (bridge.preload + bridge.rate * extension) : 0;
  const strings = pull * bridge.stringArm;
  const springs = force * bridge.springArm;
  const other = (level.extension - start) / bridge.pitch;
  const sameCount = turnsToLevel({ ...bridge, from: reference, to: pull });
  return {
    strings,
    springs,
    excess: (strings - springs) / (reference * bridge.stringArm),
    force,
    extension: Math.max(0, extension),
    toLevel: (bridge.count === zero ? sameCount : other) - turns,
    holds: level.holds,
  };
}

/** A quarter of a hundredth: what a screwdriver can't feel is level. */
export const LEVEL = 0.0025;
/** What the screws have travel for, either way. */
export const mostTurns = 8;
