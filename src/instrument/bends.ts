/** How the strings of a plan bend beside what the aim asks for, how near that brings them to breaking, and how sure their pull is. */
import {
  bend,
  estimateString,
  feelOf,
  highestFrequency,
  judge,
  relativeDifference,
  stoppedLength,
  strainState,
  strengthShare,
  worstJudged,
  type Judgement,
  type Sensation,
} from '../physics/index.ts';
import { wantedBends } from './bend-aims.ts';
import { comparisonDoubt, doubtsOf } from './doubts.ts';
import { hand } from './hand.svelte.ts';
import { onceByHand } from './once-by-hand.ts';
import { planOf, weighsBends } from './plan.ts';
import { pullsOf, type Pull } from './pulls.ts';
import type { State } from './schema.ts';

/** One sensation as strung here, beside what is asked of it. */
export interface Bent {
  readonly value: number;
  readonly reference: number;
  /** Relative: 0.05 is five per cent more than the reference */
  readonly difference: number;
  readonly judgement: Judgement;
}

export interface BentString {
  readonly pull: Bent;
  /** Undefined where the stretch of either string is unknown, or the bend is out of its reach */
  readonly push: Bent | undefined;
  readonly travel: Bent | undefined;
  /** The worst of the three; undefined unless all three were judged. */
  readonly verdict: Judgement | undefined;
  /** True when the bend would take the core past its least strength: then nothing above is to be shown. */
  readonly breaks: boolean;
  /** Core stress while bent, as a share of the minimum strength, where that is known */
  readonly share: number | undefined;
  /** Cents from the open note to where the core may break; for a polymer from the weak to the strong end of its range */
  readonly margin: { readonly low: number; readonly high: number } | undefined;
}

function judged(
  sensation: Sensation,
  value: number | undefined,
  reference: number | undefined,
  uncertainty: number,
): Bent | undefined {
  if (value === undefined || reference === undefined || reference === 0) return undefined;
  const difference = relativeDifference({ value, reference });
  const lines = hand.thresholds[sensation];
  const judgement = judge({ difference, uncertainty, sensation, lines });
  return { value, reference, difference, judgement };
}

/**
 * One standard deviation of how a bend compares with that of the reference string, relative. The reference is as unsure as what is
 * strung, which is near it in note and make; density, modulus and make, which shift both alike, are left out.
 */
function bendDoubts(
  { construction, speakingLength, frequency }: Pull,
  { fret, rise }: State['bend'],
) {
  const { push, travel } = estimateString({
    construction,
    speakingLength,
    frequency,
    bend: { fret, rise },
    doubts: doubtsOf(construction, 'one'),
  });
  const both = (of: typeof push): number => {
    if (!of) return 0;
    const others = Object.entries(of.contributions).flatMap(([name, by]) =>
      name === 'density' || name === 'modulus' ? [] : [by],
    );
    return (Math.SQRT2 * Math.hypot(...others)) / of.value;
  };
  return { push: both(push), travel: both(travel) };
}

function bentString(
  pull: Pull,
  own: Pull | undefined,
  wanted: { pull: number; push: number | undefined; travel: number | undefined },
  asked: State['bend'],
): BentString {
  const { fret, rise } = asked;
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
  const doubt = bendDoubts(pull, asked);
  const three = {
    pull: judged('pull', tension, wanted.pull, own ? comparisonDoubt(pull, own) : 0),
    push: judged('push', feel.push, wanted.push, doubt.push),
    travel: judged('travel', feel.travel, wanted.travel, doubt.travel),
  };
  if (!three.pull) throw new RangeError('wanted.pull is 0; permitted: more than 0');
  return {
    ...three,
    pull: three.pull,
    verdict:
      three.push &&
      three.travel &&
      worstJudged([three.pull.judgement, three.push.judgement, three.travel.judgement]),
    breaks: strainState(share) === 'broken',
    share,
    margin: highest && { low: cents(highest.low), high: cents(highest.high) },
  };
}

/** One entry for each string of the plan; undefined where nothing is strung or what is strung breaks. */
export const bendsOf = onceByHand((state: State): readonly (BentString | undefined)[] => {
  const wanted = wantedBends(state);
  const own = pullsOf(state.mine);
  return planOf(state).strings.map(({ pull, wanted: tension, referenceIndex }, i) => {
    if (!pull || pull.strain === 'broken') return undefined;
    const { push, travel } = wanted[i] ?? {};
    return bentString(pull, own[referenceIndex], { pull: tension, push, travel }, state.bend);
  });
});

/** The bends where the aim weighs them: then the sheet's verdict is on all three, and else on the pull, whatever is unfolded. */
export const aimedBends = (state: State): ReturnType<typeof bendsOf> | undefined =>
  weighsBends(state) ? bendsOf(state) : undefined;

/** The bends where the reader looks at them, or aims by them. */
export const shownBends = (state: State): ReturnType<typeof bendsOf> | undefined =>
  state.bend.shown || weighsBends(state) ? bendsOf(state) : undefined;
