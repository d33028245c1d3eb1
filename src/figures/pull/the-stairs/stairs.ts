/**
 * The drawer as stairs: each gauge that can be had is a step, as wide as the way to its neighbours and as high as it pulls at the
 * length and the note of the string in hand. Plain and wound strings are two flights.
 */
import { drawerOf, gaugeOf, physicalKind } from '../../../instrument/drawer.ts';
import { pullOf, type Pull } from '../../../instrument/pulls.ts';
import { once } from '../../../instrument/once.ts';
import type { Gauge, Kind, State } from '../../../instrument/schema.ts';
import { nearestPull } from '../../../physics/index.ts';
import { steadily } from '../../kit/steady.ts';
import { triedOf, withTrial } from '../../trial.ts';

/** The wanted pull goes from here to there, and the stairs a little further, as shares of the string's own pull. */
export const reach = { min: 0.7, max: 1.3 } as const;
const SHOWN = { min: 0.62, max: 1.4 } as const;

export interface Tread {
  readonly kind: Kind;
  /** thousandths: its own, and where it begins and ends */
  readonly gauge: number;
  readonly from: number;
  readonly to: number;
  readonly pull: Pull;
  /** Of the string's own pull */
  readonly height: number;
}

export interface Stairs {
  readonly own: Pull;
  /** The gauge in hand */
  readonly tried: Pull;
  readonly plain: readonly Tread[];
  readonly wound: readonly Tread[];
  /** thousandths: the drawing's ends */
  readonly from: number;
  readonly to: number;
}

/** What the steps hang on; the gauge in hand and the wanted pull are not of it. */
interface Ground {
  readonly family: Gauge['family'];
  readonly note: string;
  readonly a4: number;
  /** m */
  readonly speakingLength: number;
  /** N, of the string as it is */
  readonly own: number;
}

function flight(ground: Ground, kind: Kind): readonly Tread[] {
  const { family, own } = ground;
  const list = drawerOf(family).gauges[kind];
  const pulls = list.map((gauge) => pullOf({ ...ground, gauge: { kind, gauge, family } }));
  return list.flatMap((gauge, i): Tread[] => {
    const pull = pulls[i];
    const height = pull ? pull.tension / own : 0;
    if (!pull || height < SHOWN.min || height > SHOWN.max) return [];
    const [below = gauge - 1, above = gauge + 1] = [list[i - 1], list[i + 1]];
    return [{ kind, gauge, from: (below + gauge) / 2, to: (gauge + above) / 2, pull, height }];
  });
}

const flights = once((ground: Ground) => ({
  plain: flight(ground, 'plain'),
  wound: flight(ground, 'wound'),
}));
const steadyGround = steadily<Ground>();

export function stairsOf(state: State): Stairs {
  const { own, tried } = triedOf(state);
  const { note, speakingLength, gauge } = tried;
  const { family } = gauge;
  const { plain, wound } = flights(
    steadyGround({ family, note, a4: state.mine.a4, speakingLength, own: own.tension }),
  );
  const all = [...plain, ...wound];
  return {
    own,
    tried,
    plain,
    wound,
    from: Math.min(tried.gauge.gauge - 1, ...all.map((t) => t.from)),
    to: Math.max(tried.gauge.gauge + 1, ...all.map((t) => t.to)),
  };
}

/** The drawer's gauge whose pull is nearest to a wanted one (N), of the kind in hand; undefined when none of it holds. */
export function nearestStep(state: State, wanted: number): Gauge | undefined {
  const { tried } = triedOf(state);
  const { kind, family } = tried.gauge;
  const { speakingLength, frequency } = tried;
  const drawer = drawerOf(family).constructions;
  const asked = { speakingLength, frequency, tension: wanted, kind: physicalKind(kind, family) };
  const found = nearestPull({ ...asked, drawer });
  return found && gaugeOf(found.construction, family);
}

/** The state with the foot on the step nearest to the wanted pull. */
export function steppedTo(state: State, wanted: number): State {
  const gauge = nearestStep(state, wanted);
  if (!gauge) return state;
  const { own } = triedOf(state);
  const back = gauge.kind === own.gauge.kind && gauge.gauge === own.gauge.gauge;
  return withTrial(state, { gauge: back ? undefined : gauge });
}

/** The gauge of the make in hand that would pull exactly so much, as if every thousandth could be had. */
export const exactGauge = ({ tried }: Pick<Stairs, 'tried'>, wanted: number): number =>
  tried.gauge.gauge * Math.sqrt(wanted / tried.tension);
