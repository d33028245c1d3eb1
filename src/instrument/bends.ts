/** How the strings of a plan bend beside what the aim asks for, how near that brings them to breaking, and how sure their pull is. */
import {
  bend,
  felt,
  feelOf,
  highestFrequency,
  relativeDifference,
  stoppedLength,
  strainState,
  strengthShare,
  worstFelt,
  type Compared,
  type Felt,
  type Sensation,
} from '../physics/index.ts';
import { wantedBends } from './bend-aims.ts';
import { COVERAGE, pullEstimate } from './doubts.ts';
import { once } from './once.ts';
import { planOf, weighsBends } from './plan.ts';
import type { Pull } from './pulls.ts';
import type { State } from './schema.ts';

export interface BentString {
  readonly pull: Compared;
  /** Undefined where the stretch of either string is unknown, or the bend is out of its reach */
  readonly push: Compared | undefined;
  readonly travel: Compared | undefined;
  /** The worst of the three; undefined unless all three were judged. */
  readonly verdict: Felt | undefined;
  /** True when the bend would take the core past its least strength: then nothing above is to be shown. */
  readonly breaks: boolean;
  /** Core stress while bent, as a share of the minimum strength, where that is known */
  readonly share: number | undefined;
  /** Cents from the open note to where the core may break; for a polymer from the weak to the strong end of its range */
  readonly margin: { readonly low: number; readonly high: number } | undefined;
  /** Expanded uncertainty of the pull, N: it lies within so much in about nineteen cases of twenty. */
  readonly doubt: number;
}

function judged(
  sensation: Sensation,
  value: number | undefined,
  reference: number | undefined,
): Compared | undefined {
  if (value === undefined || reference === undefined || reference === 0) return undefined;
  const difference = relativeDifference({ value, reference });
  return { value, reference, difference, felt: felt(difference, sensation) };
}

function bentString(
  pull: Pull,
  wanted: { pull: number; push: number | undefined; travel: number | undefined },
  { fret, rise }: State['bend'],
): BentString {
  const { construction, speakingLength, frequency, tension } = pull;
  const feel = feelOf({ construction, speakingLength, frequency, fret, rise });
  const at = stoppedLength({ scaleLength: speakingLength, fret });
  const bent =
    feel.travel === undefined
      ? undefined
      : bend({ construction, speakingLength, tension, at, travel: feel.travel });
  const share = bent && strengthShare({ construction, tension: bent.tension });
  const highest = highestFrequency({ construction, speakingLength, share: 1 });
  const cents = (hertz: number): number => 1200 * Math.log2(hertz / frequency);
  const estimate = pullEstimate(pull);
  const three = {
    pull: judged('pull', tension, wanted.pull),
    push: judged('push', feel.push, wanted.push),
    travel: judged('travel', feel.travel, wanted.travel),
  };
  if (!three.pull) throw new RangeError('wanted.pull is 0; permitted: more than 0');
  return {
    ...three,
    pull: three.pull,
    verdict:
      three.push &&
      three.travel &&
      worstFelt([three.pull.felt, three.push.felt, three.travel.felt]),
    breaks: strainState(share) === 'broken',
    share,
    margin: highest && { low: cents(highest.low), high: cents(highest.high) },
    doubt: COVERAGE * estimate.uncertainty,
  };
}

/** One entry for each string of the plan; undefined where nothing is strung or what is strung breaks. */
export const bendsOf = once((state: State): readonly (BentString | undefined)[] => {
  const wanted = wantedBends(state);
  return planOf(state).strings.map(({ pull, wanted: tension }, i) => {
    if (!pull || pull.strain === 'broken') return undefined;
    const { push, travel } = wanted[i] ?? {};
    return bentString(pull, { pull: tension, push, travel }, state.bend);
  });
});

/** The bends once the reader looks at them, or aims by them: from then on pull alone is no verdict. */
export const shownBends = (state: State): ReturnType<typeof bendsOf> | undefined =>
  state.bend.shown || weighsBends(state) ? bendsOf(state) : undefined;
