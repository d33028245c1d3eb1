/** The highest string of the two instruments that are compared, worked through: the gauge that would be exactly right. */
import { speakingLengthFor, type Felt } from '../physics/index.ts';
import { bareGauge, stepGauge } from './drawer.ts';
import { once } from './once.ts';
import { compared, comparedPlan } from './pair.ts';
import { leftOn } from './plan.ts';
import { pullOf, pullsOf, type Pull } from './pulls.ts';
import type { Gauge, State } from './schema.ts';

export interface TopString {
  /** On the instrument that feels right */
  readonly own: Pull;
  /** The same string left on the one to be strung */
  readonly left: Pull;
  /** (own length × own frequency) over (other length × other frequency): what the gauge must be multiplied by */
  readonly ratio: number;
  /** Thousandths of an inch of a string of the same make that would pull exactly as before */
  readonly ideal: number;
  readonly pick: Pull | undefined;
  /** Relative difference of the pick from the old pull */
  readonly difference: number | undefined;
  readonly felt: Felt | undefined;
  /** The drawer's next lighter gauge (the next heavier where there is none), and the scale on which it would be exactly right, m */
  readonly next: Gauge;
  readonly nextScale: number;
}

/** Throws RangeError for an instrument without strings, which the schema does not admit. */
export const topString = once((state: State): TopString => {
  const pair = compared(state);
  const own = pullsOf(pair.mine)[0];
  const left = leftOn(pair)[0];
  const planned = comparedPlan(state).strings[0];
  if (!own || !left || !planned) throw new RangeError('strings is empty; permitted: 4 to 12');
  const ratio = (own.speakingLength * own.frequency) / (left.speakingLength * left.frequency);
  const bare = bareGauge(own.gauge);
  const lighter = stepGauge(bare, -1);
  const next = lighter.gauge < bare.gauge ? lighter : stepGauge(bare, 1);
  const nextPull = pullOf({ ...own, gauge: next, a4: pair.mine.a4 });
  return {
    own,
    left,
    ratio,
    ideal: own.gauge.gauge * ratio,
    pick: planned.pull,
    difference: planned.difference,
    felt: planned.felt,
    next,
    nextScale: speakingLengthFor({
      frequency: left.frequency,
      tension: own.tension,
      linearDensity: nextPull.linearDensity,
    }),
  };
});
