/** Exercises of the chapter "Gauge and mass". */
import { constructionOf, stepGauge } from '../../instrument/drawer.ts';
import { formatDifference, formatGauge } from '../../instrument/format.ts';
import type { Gauge, State, StringSpec } from '../../instrument/schema.ts';
import { linearDensity } from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const massOf = (gauge: Gauge): number => linearDensity(constructionOf(gauge));

function inHand({ mine, trial }: State): StringSpec {
  const string = mine.strings[Math.min(trial.string, mine.strings.length - 1)];
  if (!string)
    throw new RangeError(`trial.string is ${trial.string}; permitted: one of the instrument`);
  return string;
}

/** Thousandths of the plain string to reckon with: the one in hand, the first plain one, or a ten. */
function plainGauge(state: State): number {
  const mine = inHand(state);
  if (mine.kind === 'plain') return mine.gauge;
  return state.mine.strings.find(({ kind }) => kind === 'plain')?.gauge ?? 10;
}

const WANTED = 0.88;
/** The string in hand and its neighbours in the drawer, each with its pull over the own one. */
function offered(state: State): readonly { id: string; gauge: Gauge; ratio: number }[] {
  const { kind, gauge, family } = inHand(state);
  const own = { kind, gauge, ...(family && { family }) };
  const around = [-3, -2, -1, 0, 1].map((steps) => stepGauge(own, steps));
  const different = around.filter((g, i) => around.findIndex((o) => o.gauge === g.gauge) === i);
  return different.map((g) => ({ id: String(g.gauge), gauge: g, ratio: massOf(g) / massOf(own) }));
}
const missed = ({ ratio }: { ratio: number }): number => ratio / WANTED - 1;
const nearest = (state: State) =>
  offered(state).toSorted((a, b) => Math.abs(missed(a)) - Math.abs(missed(b)))[0];

const plain = (gauge: number): Gauge => ({ kind: 'plain', gauge });
const wound = (gauge: number): Gauge => ({ kind: 'wound', gauge });
const thicker = (from: Gauge, to: Gauge) => ({
  id: `${from.kind}-${from.gauge}`,
  // Four packets of the trade, which go by their names.
  label: `${formatGauge(from, 'in-lb')} to ${formatGauge(to, 'in-lb')}`,
  value: massOf(to) / massOf(from),
});

export const answers: Answers = {
  'gauge.percent': {
    kind: 'numeric',
    quantity: 'percent',
    answer: (state) => 100 * ((1 + 1 / plainGauge(state)) ** 2 - 1),
    tolerance: 0.3,
    mistakes: [
      {
        value: (state) => 100 / plainGauge(state),
        hint: 'That’s how much thicker it is. The area of the section grows with the square of the diameter.',
      },
      {
        value: (state) => 200 / plainGauge(state),
        hint: 'That’s the quick way, twice the change in diameter. For one decimal, square the ratio.',
      },
      {
        value: (state) => 100 * (1 - (1 + 1 / plainGauge(state)) ** -2),
        hint: 'That’s a share of the new pull. Take it as a share of the old one.',
      },
      {
        value: (state) => 100 * (1 + 1 / plainGauge(state)) ** 2,
        hint: 'That’s the new pull in per cent of the old one. How much more than 100 is it?',
      },
    ],
  },
  'gauge.caliper': {
    kind: 'numeric',
    quantity: 'percent',
    answer: () => 100 * ((1 + 0.01 / 0.35) ** 2 - 1),
    tolerance: 0.25,
    mistakes: [
      {
        value: () => 100 * (0.01 / 0.35),
        hint: 'That’s how uncertain the diameter is. The mass grows with its square.',
      },
      {
        value: () => 50 * (0.01 / 0.35),
        hint: 'You halved it. A square doubles it.',
      },
      {
        value: () => 400 * (0.01 / 0.35),
        hint: 'You doubled once too often: the hundredth is already the error to one side.',
      },
    ],
  },
  'gauge.choose': {
    kind: 'choose',
    options: (state) =>
      offered(state).map(({ id, gauge }) => ({ id, label: formatGauge(gauge, state.units) })),
    answer: (state) => nearest(state)?.id ?? '',
    hints: (state, id) => {
      const picked = offered(state).find((option) => option.id === id);
      if (!picked) return undefined;
      const { ratio } = picked;
      const now =
        ratio === 1
          ? 'That one pulls as before.'
          : `That one pulls ${formatDifference(ratio - 1)}.`;
      return `${now} Which comes nearer to ${formatDifference(WANTED - 1)}?`;
    },
  },
  'gauge.order': {
    kind: 'order',
    items: () => [
      thicker(plain(9), plain(10)),
      thicker(plain(13), plain(14)),
      thicker(plain(17), plain(18)),
      thicker(wound(46), wound(47)),
    ],
    ends: ['smallest change', 'largest change'],
    hint: 'The thousandth is always the same, but the string isn’t. Divide it by the gauge it’s added to.',
  },
  'gauge.sheet': {
    kind: 'mistake',
    lines: () => [
      'A plain twelve replaces a plain ten: the diameter grows by the factor 12 / 10 = 1.2.',
      'The mass of a metre grows like the area, so it grows by the factor 1.2 too.',
      'At the same length and note the pull grows like the mass of a metre.',
      'A pull of 10 lb with the ten is then more than 10 lb with the twelve.',
    ],
    wrong: 1,
    hints: [
      'The gauge is the diameter, in thousandths of an inch.',
      undefined,
      'The pull is the mass of a metre times the square of twice length times pitch, and those stay.',
      'More mass, more pull. How much more is decided higher up.',
    ],
    right: () =>
      `The mass of a metre grows like the area, so like the square of the diameter, by the factor ${(1.2 ** 2).toFixed(2)}.`,
  },
};
