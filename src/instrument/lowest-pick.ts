/** The lowest string of the two instruments that are compared: the drawer's gauges about the one that pulls as before. */
import { bareGauge, drawerOf } from './drawer.ts';
import { once } from './once.ts';
import { compared } from './pair.ts';
import { leftOn } from './plan.ts';
import { pullOf, pullsOf, type Pull } from './pulls.ts';
import type { State } from './schema.ts';

/** How many gauges stand on offer. */
const OFFERED = 5;

export interface LowestPick {
  /** On the instrument that feels right */
  readonly own: Pull;
  /** The same string left on the one to be strung */
  readonly left: Pull;
  /** (own length × own frequency) over (other length × other frequency), squared: what the unit weight must be multiplied by */
  readonly ratio: number;
  /** Neighbours in the drawer, from the lightest, as they would pull on the one to be strung */
  readonly offered: readonly Pull[];
  /** The one of them whose pull is nearest to the old one */
  readonly best: Pull;
}

/** Throws RangeError for an instrument without strings, which the schema does not admit. */
export const lowestPick = once((state: State): LowestPick => {
  const pair = compared(state);
  const own = pullsOf(pair.mine).at(-1);
  const left = leftOn(pair).at(-1);
  if (!own || !left) throw new RangeError('strings is empty; permitted: 4 to 12');
  const bare = bareGauge(own.gauge);
  const all = drawerOf(bare.family).gauges[bare.kind].map((gauge) =>
    pullOf({ ...left, gauge: { ...bare, gauge }, a4: pair.other.a4 }),
  );
  const off = ({ tension }: Pull): number => Math.abs(tension - own.tension);
  const [first, ...others] = all;
  if (!first) throw new RangeError('the drawer is empty; permitted: one gauge or more');
  const best = others.reduce((nearest, pull) => (off(pull) < off(nearest) ? pull : nearest), first);
  const from = Math.min(all.indexOf(best) - Math.floor(OFFERED / 2), all.length - OFFERED);
  return {
    own,
    left,
    ratio: ((own.speakingLength * own.frequency) / (left.speakingLength * left.frequency)) ** 2,
    offered: all.slice(Math.max(0, from), Math.max(0, from) + OFFERED),
    best,
  };
});
