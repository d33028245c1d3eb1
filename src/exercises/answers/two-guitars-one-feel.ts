import { topString } from '../../instrument/ideal-gauge.ts';
import type { State } from '../../instrument/schema.ts';
import type { Answers, NumericExercise } from '../types.ts';

const percent = (share: number): number => 100 * share;

/** What the whole drawer would need: the gauge that pulls as before. */
const ideal: NumericExercise = {
  kind: 'numeric',
  quantity: 'number',
  answer: (s) => topString(s).ideal,
  tolerance: 0.005,
  mistakes: [
    {
      value: (s) => topString(s).own.gauge.gauge / topString(s).ratio,
      hint: 'The ratio stands upside down. On the longer scale the same string would pull more: does it need more gauge there, or less?',
    },
    {
      value: (s) => topString(s).own.gauge.gauge * topString(s).ratio ** 2,
      hint: 'That is the ratio squared, which the mass of each metre follows. The diameter is its square root.',
    },
    {
      value: (s) => topString(s).own.gauge.gauge * Math.sqrt(topString(s).ratio),
      hint: 'One root too many: the mass goes as the square of the ratio, and the diameter as the root of the mass.',
    },
    {
      value: (s) => (s.mine.strings.at(-1)?.gauge ?? NaN) * topString(s).ratio,
      hint: 'That is the lowest string, and most lowest strings are wound. The question is about the highest.',
    },
    {
      value: (s) => topString(s).pick?.gauge.gauge ?? NaN,
      hint: 'That gauge exists, but it is not yet the exact one. Work out the diameter first, then look in the drawer.',
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
      hint: 'You compared the diameters. Pull goes with the mass, and the mass of a plain string with the diameter squared.',
    },
    {
      value: (s) => percent(topString(s).left.tension / topString(s).own.tension - 1),
      hint: 'That is the old string left on. Take the nearest gauge instead.',
    },
    {
      value: (s) => percent((topString(s).pick?.tension ?? NaN) / topString(s).left.tension - 1),
      hint: 'That compares with the old string on the new scale. The hand compares with the old string on the old scale.',
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
      hint: 'The ratio stands upside down: a lighter string needs a longer scale to pull the same.',
    },
    {
      value: (s) =>
        topString(s).own.speakingLength *
        (topString(s).own.gauge.gauge / topString(s).next.gauge) ** 2,
      hint: 'The gauges are squared once too often. Mass goes as gauge squared and as one over length squared: the squares cancel.',
    },
    {
      value: (s) =>
        (topString(s).left.speakingLength * topString(s).own.gauge.gauge) / topString(s).next.gauge,
      hint: 'You began from the wrong instrument. The pull to keep is that of the one that feels right.',
    },
  ],
};

export const answers: Answers = {
  'two-guitars-one-feel.ideal': ideal,
  'two-guitars-one-feel.residual': residual,
  'two-guitars-one-feel.scale': nextScale,
};
