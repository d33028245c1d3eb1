/** A wound string to look into: the one in hand, or another of the instrument, or one from the drawer where none can be taken apart. */
import {
  linearDensity,
  strainState,
  strengthShare,
  tension,
  type WoundString,
} from '../physics/index.ts';
import { bareGauge, nearestGauge } from './drawer.ts';
import { once } from './once.ts';
import { lengthOf, pullOf, type Pull } from './pulls.ts';
import type { Gauge, Instrument, Kind, State } from './schema.ts';

export interface WoundPull extends Pull {
  readonly construction: WoundString;
}

export interface WoundInHand {
  readonly pull: WoundPull;
  /** Counted from 0 at the highest */
  readonly string: number;
  /** The string in hand as the drawer makes it; another of the instrument; a stand-in with a steel core, which is not on it */
  readonly as: 'own' | 'another' | 'stand-in';
  /** Kind of the string in hand itself */
  readonly hand: Kind;
}

function pulled(mine: Instrument, string: number, gauge: Gauge): WoundPull | undefined {
  const spec = mine.strings[string];
  if (!spec) return undefined;
  const speakingLength = lengthOf(mine, string);
  const pull = pullOf({ gauge: bareGauge(gauge), note: spec.note, a4: mine.a4, speakingLength });
  const { construction } = pull;
  return construction.kind === 'wound' ? { ...pull, construction } : undefined;
}

/** As much of a state as it hangs on. */
type Held = Pick<State, 'mine' | 'trial'>;

/** Throws RangeError for an instrument without strings, which the schema does not admit. */
export const woundInHand = once(({ mine, trial }: Held): WoundInHand => {
  const { strings } = mine;
  const hand = Math.min(trial.string, strings.length - 1);
  const kind = strings[hand]?.kind ?? 'plain';
  for (const [i, as] of [
    [hand, 'own'] as const,
    ...strings.map((_, i) => [i, 'another'] as const),
  ]) {
    const spec = strings[i];
    const pull = spec?.kind === 'wound' ? pulled(mine, i, spec) : undefined;
    if (pull) return { pull, string: i, as, hand: kind };
  }
  const string = strings.length - 1;
  const gauge = nearestGauge('wound', strings[string]?.gauge ?? 46);
  const pull = pulled(mine, string, { kind: 'wound', gauge });
  if (!pull) throw new RangeError('strings is empty; permitted: 4 to 12');
  return { pull, string, as: 'stand-in', hand: kind };
});

/** The same length and note with a string of another make. */
export function remade(pull: WoundPull, construction: WoundString): WoundPull {
  const { speakingLength, frequency } = pull;
  const density = linearDensity(construction);
  const force = tension({ speakingLength, frequency, linearDensity: density });
  const share = strengthShare({ construction, tension: force });
  return {
    ...pull,
    construction,
    linearDensity: density,
    tension: force,
    share,
    strain: strainState(share),
  };
}
