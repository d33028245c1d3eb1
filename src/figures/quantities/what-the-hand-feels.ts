/** Numbers of the chapter "What the hand feels". */
import {
  formatDifference,
  formatForce,
  formatLength,
  formatShare,
} from '../../instrument/format.ts';
import { compared } from '../../instrument/pair.ts';
import { stretchKnown } from '../../instrument/pushed.ts';
import { constructionOf } from '../../instrument/drawer.ts';
import type { State } from '../../instrument/schema.ts';
import {
  axialStiffness,
  bendToRise,
  compareFeel,
  feltThresholds,
  fretPosition,
  fromInches,
  fromMillimetres,
  giveUnderPick,
  INCH,
  lateralStiffness,
  millimetres,
  noteFrequency,
  shareRight,
  touchAtFret,
  type Compared,
} from '../../physics/index.ts';
import { formatRise } from '../kit/bend/words.ts';
import { ASIDE, pushAt } from '../feel/fingers-place/place.ts';
import { equalPull, exactView } from '../feel/three-rulers/feel.ts';
import { verdictText } from '../feel/three-rulers/describe.ts';
import { triedOf } from '../trial.ts';
import type { Quantity } from './common.ts';

const UNKNOWN = 'an unknown amount';
const TWELVE = 12;
/** Where a pick commonly strikes, m from the saddle: common practice. */
const PICK = fromMillimetres(90);

/** One of the three of the second string that pulls exactly alike. */
const judged =
  (of: 'pull' | 'push' | 'travel', text: (compared: Compared, state: State) => string): Quantity =>
  (s) => {
    const { feel, broken } = exactView(s);
    const value = feel[of];
    if (broken) return 'nothing, since a string would break';
    return value ? text(value, s) : UNKNOWN;
  };
const difference = ({ difference: by }: Compared): string => formatDifference(by);

const own = (s: State) => triedOf(s).own;
const tried = (s: State) => triedOf(s).tried;

const live: Readonly<Record<string, Quantity>> = {
  'hand.bend': (s) => `${formatRise(s.bend.rise)} at fret ${s.bend.fret}`,
  'hand.other': (s) => compared(s).other.name || 'the second instrument',
  'hand.pushMore': judged('push', difference),
  'hand.travelMore': judged('travel', difference),
  'hand.verdict': (s) => verdictText(exactView(s)),
  'hand.pushN': judged('push', ({ reference }) => `${reference.toFixed(1)}\u00a0N`),
  'hand.travelMm': judged(
    'travel',
    ({ reference }) => `${millimetres(reference).toFixed(1)}\u00a0mm`,
  ),
  'hand.milli': (s) => formatForce(pushAt(tried(s), 0.5), s.units),
  'hand.first': (s) =>
    formatForce(pushAt(tried(s), fretPosition({ scaleLength: 1, fret: 1 })), s.units),
  'hand.raised': (s) => {
    const { construction, tension, speakingLength } = tried(s);
    if (!stretchKnown({ construction })) return UNKNOWN;
    // Twice the millimetre squared over the length squared is the strain in the middle.
    const strain = (2 * ASIDE ** 2) / speakingLength ** 2;
    return formatShare((axialStiffness(construction, tension) * strain) / tension, 2);
  },
};

const percent = (value: number): string => formatShare(value);
const thresholds: Readonly<Record<string, Quantity>> = {
  'hand.travelLow': () => percent(feltThresholds.travel.low.value),
  'hand.travelHigh': () => percent(feltThresholds.travel.high.value),
  'hand.right1': () => percent(shareRight({ dPrime: 1 })),
  'hand.right2': () => percent(shareRight({ dPrime: 2 })),
  'hand.right3': () => percent(shareRight({ dPrime: 3 })),
};

const equation: Readonly<Record<string, Quantity>> = {
  'hand.eq.T': (s) => tried(s).tension.toFixed(1),
  'hand.eq.L': (s) => millimetres(tried(s).speakingLength).toFixed(1),
  'hand.eq.k': (s) => {
    const { tension, speakingLength } = tried(s);
    const stiffness = lateralStiffness({ tension, speakingLength, at: speakingLength / 2 });
    return (stiffness / 1000).toFixed(3);
  },
};

/** Two lengths of one note, the strings scaled to pull alike: a plain ten on 25.5 in, and its counterpart on 27. */
const frequency = noteFrequency('E4');
const reference = {
  construction: constructionOf({ kind: 'plain', gauge: 10 }),
  speakingLength: fromInches(25.5),
  frequency,
};
const place = { speakingLength: fromInches(27), frequency };
const alike = compareFeel({
  reference,
  other: { construction: equalPull(reference, place), ...place },
  fret: TWELVE,
  rise: 200,
});
const same = compareFeel({
  reference,
  other: { construction: reference.construction, ...place },
  fret: TWELVE,
  rise: 200,
});
const bare = (value: Compared | undefined): string => formatShare(value?.difference ?? NaN);

const constant: Readonly<Record<string, Quantity>> = {
  'hand.c.push': () => formatShare(alike.push?.difference ?? NaN, 1),
  'hand.c.travel': () => bare(alike.travel),
  'hand.c.left': () => bare(same.pull),
  'hand.c.leftPush': () => bare(same.push),
  'hand.c.softer': () => formatShare(1 - reference.speakingLength / place.speakingLength, 1),
};

/** The three comparisons at equal pull, from the reference's length to that of a common bass, each by itself. */
const bass = { speakingLength: fromInches(34), frequency };
const pair = [
  { ...reference, fret: TWELVE, rise: 200, fromSaddle: PICK },
  {
    construction: equalPull(reference, bass),
    ...bass,
    fret: TWELVE,
    rise: 200,
    fromSaddle: PICK,
  },
] as const;
type OfPair = (typeof pair)[number];
const changed = (of: (string: OfPair) => number | undefined): number => {
  const [here, there] = pair.map((string) => of(string) ?? NaN);
  return (there ?? NaN) / (here ?? NaN) - 1;
};
const three: Readonly<Record<string, Quantity>> = {
  'hand.three.touch': () => formatShare(-changed(touchAtFret)),
  'hand.three.push': () => formatShare(changed((s) => bendToRise(s)?.push)),
  'hand.three.travel': () => formatShare(changed((s) => bendToRise(s)?.travel)),
  'hand.three.pick': () => formatShare(-changed(giveUnderPick)),
  'hand.three.from': (s) => formatLength(PICK, s.units),
};

const inchLonger = (s: State): number => own(s).speakingLength / (own(s).speakingLength + INCH);
const exercises: Readonly<Record<string, Quantity>> = {
  'hand.twoMillimetres': (s) => formatForce(2 * pushAt(own(s), 0.5), s.units),
  'hand.ownL': (s) => own(s).speakingLength.toFixed(4),
  'hand.ownT': (s) => own(s).tension.toFixed(1),
  'hand.inchRatio': (s) => inchLonger(s).toFixed(4),
  'hand.inchSofter': (s) => formatDifference(inchLonger(s) - 1),
};

export const quantities: Readonly<Record<string, Quantity>> = {
  ...live,
  ...thresholds,
  ...equation,
  ...constant,
  ...three,
  ...exercises,
};
