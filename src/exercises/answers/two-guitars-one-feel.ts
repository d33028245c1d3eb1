import { constructionOf } from '../../instrument/drawer.ts';
import { formatDensity, formatDifference, formatGauge } from '../../instrument/format.ts';
import { exactGauge, formatThickness } from '../../instrument/thickness-text.ts';
import { topString } from '../../instrument/ideal-gauge.ts';
import { lowestPick } from '../../instrument/lowest-pick.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import { linearDensity, tensionRatio } from '../../physics/index.ts';
import type {
  Answers,
  ChooseExercise,
  MistakeExercise,
  NumericExercise,
  OrderExercise,
  OrderItem,
} from '../types.ts';

const plain = (gauge: number): Gauge => ({ kind: 'plain', gauge });
const wound = (gauge: number): Gauge => ({ kind: 'wound', gauge });
const weigh = (gauge: Gauge): number => linearDensity(constructionOf(gauge));
const percent = (share: number): number => 100 * share;

/** What the whole drawer would need: the gauge that pulls as before. */
const ideal: NumericExercise = {
  kind: 'numeric',
  quantity: 'thickness',
  answer: (s) => topString(s).ideal,
  tolerance: 0.005,
  mistakes: [
    {
      value: (s) => topString(s).own.gauge.gauge / topString(s).ratio,
      hint: 'Your ratio is upside down. On the longer scale the same string would pull harder. Does it have to be thicker there, or thinner?',
    },
    {
      value: (s) => topString(s).own.gauge.gauge * topString(s).ratio ** 2,
      hint: 'That’s the ratio squared, which is right for the mass of a metre. The diameter goes by its square root.',
    },
    {
      value: (s) => topString(s).own.gauge.gauge * Math.sqrt(topString(s).ratio),
      hint: 'You took one root too many: the mass changes by the square of the ratio, and the diameter by the root of that.',
    },
    {
      value: (s) => (s.mine.strings.at(-1)?.gauge ?? NaN) * topString(s).ratio,
      hint: 'That’s the lowest string. The question is about the highest.',
    },
    {
      value: (s) => topString(s).pick?.gauge.gauge ?? NaN,
      hint: 'You can buy that gauge, but it isn’t the exact one. Work out the diameter first.',
    },
  ],
};

const pickDifference = (s: State): number => percent(topString(s).difference ?? NaN);

const residual: NumericExercise = {
  kind: 'numeric',
  quantity: 'percent',
  answer: pickDifference,
  tolerance: 0.35,
  mistakes: [
    {
      value: (s) => percent((topString(s).pick?.gauge.gauge ?? NaN) / topString(s).ideal - 1),
      hint: 'You compared the diameters. Pull depends on the mass, and a plain string’s mass on the diameter squared.',
    },
    {
      value: (s) => percent(topString(s).left.tension / topString(s).own.tension - 1),
      hint: 'That’s the old string, left on. Take the nearest gauge instead.',
    },
    {
      value: (s) => percent((topString(s).pick?.tension ?? NaN) / topString(s).left.tension - 1),
      hint: 'That compares it with the old string on the new scale. The hand compares it with the old string on the old scale.',
    },
  ],
};

const nextScale: NumericExercise = {
  kind: 'numeric',
  quantity: 'length',
  answer: (s) => topString(s).nextScale,
  tolerance: 0.003,
  mistakes: [
    {
      value: (s) => topString(s).own.speakingLength ** 2 / topString(s).nextScale,
      hint: 'Your ratio is upside down: a lighter string needs a longer scale to pull the same.',
    },
    {
      value: (s) =>
        topString(s).own.speakingLength *
        (topString(s).own.gauge.gauge / topString(s).next.gauge) ** 2,
      hint: 'You squared the gauges once too often. Gauge and length are both squared in the pull, so the squares cancel.',
    },
    {
      value: (s) =>
        (topString(s).left.speakingLength * topString(s).own.gauge.gauge) / topString(s).next.gauge,
      hint: 'You started from the wrong instrument. Keep the pull of the one that feels right.',
    },
  ],
};

/** The lowest string, which is mostly wound: weighed, since its gauge alone says little. */
const lowest: ChooseExercise = {
  kind: 'choose',
  options: (s) =>
    lowestPick(s).offered.map(({ gauge, linearDensity }) => ({
      id: String(gauge.gauge),
      label: `${formatGauge(gauge, s.units)}, ${formatDensity(linearDensity)}`,
    })),
  answer: (s) => String(lowestPick(s).best.gauge.gauge),
  hints: (s, id) => {
    const { offered, own } = lowestPick(s);
    const pull = offered.find(({ gauge }) => String(gauge.gauge) === id);
    if (!pull) return undefined;
    const difference = formatDifference(pull.tension / own.tension - 1);
    return Number(id) === own.gauge.gauge
      ? `That is the old gauge left on: ${difference} of pull. Multiply its unit weight by the ratio of L f, squared.`
      : `That would pull ${difference} against the old string. Work out the unit weight for the same pull, then take the nearest.`;
  },
};

const stepFrom = (from: Gauge, to: number): OrderItem => ({
  id: `${from.gauge}-${to}`,
  label: `${from.kind}, from ${from.gauge} to ${to}`,
  value: tensionRatio({ linearDensity: weigh({ ...from, gauge: to }) / weigh(from) }) - 1,
});

/** The same string but one step of gauge heavier, by what the step adds to its pull. */
const steps: OrderExercise = {
  kind: 'order',
  ends: ['smallest step', 'largest step'],
  items: () => [
    stepFrom(plain(9), 10),
    stepFrom(plain(12), 13),
    stepFrom(wound(26), 28),
    stepFrom(wound(46), 47),
  ],
  hint: 'By how many per cent does each step make the string thicker? Twice that is roughly what it adds to the pull.',
};

/** A gauge worked out without the root. */
const sheet: MistakeExercise = {
  kind: 'mistake',
  wrong: 2,
  lines: (s) => {
    const { ratio, own } = topString(s);
    const mass = (ratio ** 2).toFixed(4);
    return [
      'Equal pulls, the new string with a dash: μ′ (2 L′ f′)² = μ (2 L f)²',
      `Unit weights: μ′ / μ = (L f / L′ f′)² = ${ratio.toFixed(4)}² = ${mass}`,
      `A heavier string is a thicker one. Gauges: d′ / d = μ′ / μ = ${mass}`,
      `New gauge: d′ = ${mass} × ${exactGauge(own.gauge.gauge, s.units)} = ${formatThickness(ratio ** 2 * own.gauge.gauge, s.units, 2)}`,
    ];
  },
  right: (s) =>
    `d′ / d = √(μ′ / μ) = L f / L′ f′ = ${topString(s).ratio.toFixed(4)}. The mass grows with the diameter squared.`,
  hints: [
    'That’s the law of the first chapter, once for each instrument.',
    'What multiplies the unit weight is the ratio of L f, squared.',
    undefined,
    'It multiplies the old gauge by the ratio above. Is it the ratio of the diameters?',
  ],
};

export const answers: Answers = {
  'two-guitars-one-feel.ideal': ideal,
  'two-guitars-one-feel.residual': residual,
  'two-guitars-one-feel.scale': nextScale,
  'two-guitars-one-feel.lowest': lowest,
  'two-guitars-one-feel.steps': steps,
  'two-guitars-one-feel.sheet': sheet,
};
