/** The exercises of "Bending". */
import { constructionOf, nearestGauge } from '../../instrument/drawer.ts';
import { formatGauge, formatLength, gaugeNumber } from '../../instrument/format.ts';
import { pullOf, pullsOf, type Pull } from '../../instrument/pulls.ts';
import { pushedTo, tuned, type Pushed } from '../../instrument/pushed.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import { axialStiffness, coreArea, fromInches, millimetres } from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const TONE = 200;
const FRET = 12;
const INCH = fromInches(1);

function inHand({ mine, trial }: State): Pull {
  const pull = pullsOf(mine)[Math.min(trial.string, mine.strings.length - 1)];
  if (!pull) throw new RangeError('mine.strings is empty; permitted: at least one string');
  return pull;
}

/** The bend of a string that can be bent so far. */
function bentTo(pull: Parameters<typeof pushedTo>[0], rise: number): Pushed {
  const pushed = pushedTo(pull, FRET, rise);
  if (!pushed || pushed.strain === 'broken' || pushed.rise < rise - 1)
    throw new RangeError('pull cannot be bent so far; permitted: a string of known stretch');
  return pushed;
}

const toneTravel = (s: State): number => bentTo(inHand(s), TONE).travel;

const longer = (s: State, by: number): number => {
  const { gauge, note, speakingLength } = inHand(s);
  const moved = pullOf({ gauge, note, a4: s.mine.a4, speakingLength: speakingLength + by });
  return 100 * (bentTo(moved, TONE).travel / toneTravel(s) - 1);
};
const lengthMore = (s: State): number => INCH / inHand(s).speakingLength;

/** What the player asks for, as a share of the push that the string has. */
const SOFTER = 0.8;

/** The gauge with its push nearest to what is asked, and five to choose from around the string's own. */
function softer(s: State): { options: readonly number[]; answer: number } {
  const own = inHand(s);
  const { kind, gauge, family } = own.gauge;
  const options = [0.75, 0.8, 0.9, 0.95, 1.1].map((share) =>
    nearestGauge(kind, gauge * share, family),
  );
  const pushOf = (to: number): number => {
    const other = { ...own.gauge, gauge: to };
    const pull = pullOf({
      gauge: other,
      note: own.note,
      a4: s.mine.a4,
      speakingLength: own.speakingLength,
    });
    return bentTo(pull, TONE).push / bentTo(own, TONE).push;
  };
  const list = [...new Set(options)].filter((g) => g !== gauge).toSorted((a, b) => a - b);
  const off = (g: number): number => Math.abs(pushOf(g) - SOFTER);
  const answer = list.reduce((best, g) => (off(g) < off(best) ? g : best), list[0] ?? gauge);
  return { options: list, answer };
}

const STANDARD = fromInches(25.5);
const strings: readonly { gauge: Gauge; note: string; length: number }[] = [
  { gauge: { kind: 'plain', gauge: 17 }, note: 'G3', length: STANDARD },
  { gauge: { kind: 'plain', gauge: 13 }, note: 'B3', length: STANDARD },
  { gauge: { kind: 'wound', gauge: 20 }, note: 'G3', length: STANDARD },
  { gauge: { kind: 'plain', gauge: 10 }, note: 'E4', length: STANDARD },
  { gauge: { kind: 'plain', gauge: 10 }, note: 'E4', length: fromInches(27) },
];

/** The worked sheet: a wound third on 25.5 in, its section taken over the wrap. */
function sheet(): readonly string[] {
  const construction = constructionOf({ kind: 'wound', gauge: 20 });
  const { tension } = tuned(construction, STANDARD, 'G3');
  if (construction.kind !== 'wound') return [];
  const over = (Math.PI / 4) * construction.diameter ** 2;
  const modulus = axialStiffness(construction, tension) / coreArea(construction);
  const more = 2 ** (TONE / 600) - 1;
  const strain = (more * tension) / (modulus * over);
  const y = STANDARD * Math.sqrt(strain / 2);
  const square = (area: number): string => (area * 1e6).toFixed(3);
  return [
    `A whole tone up multiplies the pull by 2^(200/600) = ${(1 + more).toFixed(3)}.`,
    `The pull of ${tension.toFixed(1)} N has to grow by ${(more * tension).toFixed(1)} N.`,
    `The string is ${millimetres(construction.diameter).toFixed(3)} mm thick, so ${square(over)} mm² of steel is stretched.`,
    `That needs a strain of ${(more * tension).toFixed(1)} N / (${(modulus / 1e9).toFixed(0)} GPa × ${square(over)} mm²) = ${strain.toPrecision(3)}.`,
    `In the middle of the string the strain is 2y²/L², so y = ${millimetres(STANDARD).toFixed(1)} mm × √(strain / 2) = ${millimetres(y).toFixed(1)} mm.`,
  ];
}

export const answers: Answers = {
  'bending.half': {
    kind: 'numeric',
    quantity: 'length',
    answer: (s) => bentTo(inHand(s), TONE / 2).travel,
    tolerance: 0.02,
    mistakes: [
      {
        value: (s) => toneTravel(s) / 2,
        hint: 'Half the travel gives only about a quarter of the rise. The rise grows with the square of the travel, so take a root.',
      },
      {
        value: (s) => toneTravel(s) / 4,
        hint: 'You squared the half. From rise back to travel you take the root.',
      },
      {
        value: (s) => toneTravel(s) * Math.SQRT2,
        hint: 'The root of two is right, but the wrong way round: half the rise takes less travel.',
      },
    ],
  },
  'bending.longer': {
    kind: 'numeric',
    quantity: 'percent',
    answer: (s) => longer(s, INCH),
    tolerance: 0.3,
    mistakes: [
      {
        value: (s) => 100 * lengthMore(s),
        hint: 'That’s how much longer the string is. Travel grows with the length squared: once for the longer triangle, once for the higher stress.',
      },
      {
        value: () => 0,
        hint: 'Gauge doesn’t change the travel. Length does: at the same note a longer string is under more stress.',
      },
      {
        value: (s) => 100 * ((1 + lengthMore(s)) ** 4 - 1),
        hint: 'You squared once too often. Length counts twice in all.',
      },
    ],
  },
  'bending.softer': {
    kind: 'choose',
    options: (s) => {
      const { kind, family } = inHand(s).gauge;
      return softer(s).options.map((gauge) => ({
        id: String(gauge),
        label: formatGauge({ kind, gauge, family }, s.units),
      }));
    },
    answer: (s) => String(softer(s).answer),
    hints: (s, id) => {
      const own = inHand(s).gauge.gauge;
      if (Number(id) > own) return 'A thicker string pulls harder, and it’s harder to push, too.';
      return Number(id) < softer(s).answer
        ? 'That’s too thin. Push depends on the pull, and the pull on the square of the gauge. Which square is about four fifths of the old one?'
        : 'That’s not thin enough. Square the ratio of the gauges. Is it near four fifths?';
    },
  },
  'bending.order': {
    kind: 'order',
    items: (s) =>
      strings.map(({ gauge, note, length }) => ({
        id: `${note}-${gauge.kind}-${gauge.gauge}-${length.toFixed(3)}`,
        label: `${note}, ${gauge.kind} ${gaugeNumber(gauge.gauge, s.units)}, ${formatLength(length, s.units)}`,
        value: bentTo(tuned(constructionOf(gauge), length, note), TONE).travel,
      })),
    ends: ['least travel', 'most travel'],
    hint: 'For plain steel only note and length count: higher and longer both mean more stress and more travel. A wrap adds weight, and the core alone has to carry the pull for it.',
  },
  'bending.sheet': {
    kind: 'mistake',
    lines: sheet,
    wrong: 2,
    hints: [
      'A rise in cents multiplies the frequency by 2^(cents/1200), and the pull by the square of that.',
      'The extra pull is the factor minus one, times the pull.',
      undefined,
      'This is Hooke’s law, used correctly. But are the numbers that go into it right?',
      'That’s the geometry for the middle, and it follows from the line before.',
    ],
    right: () => {
      const construction = constructionOf({ kind: 'wound', gauge: 20 });
      if (construction.kind !== 'wound') return '';
      const travel = bentTo(tuned(construction, STANDARD, 'G3'), TONE).travel;
      return `Only the core is stretched: a hexagon of ${millimetres(construction.core.diameter).toFixed(3)} mm across flats has ${(coreArea(construction) * 1e6).toFixed(3)} mm². With it the travel becomes ${millimetres(travel).toFixed(1)} mm.`;
    },
  },
};
