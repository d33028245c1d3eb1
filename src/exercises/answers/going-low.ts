/** Exercises of the chapter "Going low": the reader's lowest string, a fourth lower. */
import { bareGauge, drawerOf, nearestGauge } from '../../instrument/drawer.ts';
import { formatDensity, formatGauge, formatNote } from '../../instrument/format.ts';
import {
  lengthFactor,
  lowString,
  massFactor,
  ownLow,
  PROPOSED,
  withLow,
  type LowString,
  type LowStrung,
} from '../../instrument/low-string.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import type { Answers } from '../types.ts';

const fourth = (state: State): LowString => lowString(withLow(state, { semitones: PROPOSED }));
const own = (state: State): LowStrung => ownLow(state.mine).own;
const LENGTH = lengthFactor(PROPOSED);
const MASS = massFactor(PROPOSED);

/** The drawer's gauge nearest to so many times the own one. */
function times(state: State, factor: number): Gauge {
  const { kind, gauge, family } = own(state).gauge;
  return { ...bareGauge(own(state).gauge), gauge: nearestGauge(kind, gauge * factor, family) };
}

const wrongGauge: readonly (readonly [factor: number, hint: string])[] = [
  [
    MASS,
    'That gauge grew by as much as the mass has to. Mass grows with the square of the gauge, so take a root.',
  ],
  [1 + PROPOSED / 100, 'One semitone takes about 6 % more thickness, and five of them multiply.'],
  [
    Math.sqrt(LENGTH),
    'You took one root too many. The mass grows with the square of the ratio of pitches, and the gauge with the root of that.',
  ],
];

/** What may be chosen: the right gauge and where likely slips lead, each once. */
function offered(state: State): readonly Gauge[] {
  const right = fourth(state).thicker.gauge;
  const all = [right, ...wrongGauge.map(([factor]) => times(state, factor)), times(state, 2)];
  const { kind, family } = right;
  // Where the drawer ends early, thinner gauges take the places of those that it does not hold.
  const spare = [...drawerOf(family).gauges[kind]].reverse().map((gauge) => ({ ...right, gauge }));
  const seen = new Map([...all, ...spare].map((gauge) => [gauge.gauge, gauge]));
  return [...seen.values()].slice(0, 4).sort((a, b) => a.gauge - b.gauge);
}

export const answers: Answers = {
  'going-low.down': {
    kind: 'numeric',
    quantity: 'force',
    answer: (state) => fourth(state).down.tension,
    tolerance: 0.015,
    mistakes: [
      {
        value: (state) => own(state).tension / LENGTH,
        hint: 'That’s how the pitch changes. For the pull, pitch counts twice.',
      },
      {
        value: (state) => own(state).tension * MASS,
        hint: 'That’s five semitones up. Going down means less pull.',
      },
      {
        value: (state) => own(state).tension * (1 - PROPOSED / 12),
        hint: 'Five twelfths of an octave is right, but the steps multiply. Don’t subtract them.',
      },
    ],
  },
  'going-low.gauge': {
    kind: 'choose',
    options: (state) =>
      offered(state).map((g) => ({ id: String(g.gauge), label: formatGauge(g, state.units) })),
    answer: (state) => String(fourth(state).thicker.gauge.gauge),
    hints: (state, id) => {
      const slip = wrongGauge.find(([factor]) => String(times(state, factor).gauge) === id)?.[1];
      const thin = Number(id) < fourth(state).thicker.gauge.gauge;
      return (
        slip ??
        (thin
          ? 'That one is too thin, and pulls less than now. Something nearer is among them.'
          : 'That one is too thick, and pulls more than now. Twice the gauge would be an octave’s worth.')
      );
    },
  },
  'going-low.length': {
    kind: 'numeric',
    quantity: 'length',
    answer: (state) => own(state).speakingLength * LENGTH,
    tolerance: 0.005,
    mistakes: [
      {
        value: (state) => own(state).speakingLength / LENGTH,
        hint: 'That’s shorter. A lower note takes pull away. Does a longer or a shorter string give it back?',
      },
      {
        value: (state) => own(state).speakingLength * MASS,
        hint: 'You squared once too often. Length and pitch are in the same bracket, so one makes up for the other.',
      },
      {
        value: (state) => own(state).speakingLength * Math.sqrt(LENGTH),
        hint: 'You don’t need a root: length and pitch both count twice, so one ratio undoes the other.',
      },
    ],
  },
  'going-low.travel': {
    kind: 'order',
    items: (state) => {
      const { down, longer, thicker } = fourth(state);
      const all = [
        { id: 'own', label: 'As it is, at its own note', string: own(state) },
        { id: 'down', label: 'Tuned down a fourth', string: down },
        { id: 'longer', label: 'On the longer scale that keeps its pull', string: longer },
        { id: 'thicker', label: 'With the thicker string that keeps its pull', string: thicker },
      ];
      return all.map(({ id, label, string }) => ({ id, label, value: string.travel ?? NaN }));
    },
    ends: ['shortest travel', 'longest travel'],
    hint: 'Your finger stretches the string. On a slack one, or one with a thick core, a short travel is enough. A long one takes more.',
  },
  'going-low.sheet': {
    kind: 'mistake',
    lines: (state) => {
      const { note, linearDensity } = own(state);
      const weight = (factor: number) => formatDensity(linearDensity * factor);
      return [
        `${formatNote(fourth(state).note)} is five semitones below ${formatNote(note)}: the pitch falls by the factor ${LENGTH.toFixed(3)}.`,
        `For the same pull on the same length, the unit weight has to grow by the same factor.`,
        `The string weighs ${weight(1)}, so the new one has to weigh ${weight(LENGTH)}.`,
        `At ${formatNote(note)} the new string would pull harder than the old one.`,
      ];
    },
    wrong: 1,
    hints: [
      'Count them down with their sharps. Five of the twelve equal steps of an octave are two to the power of five twelfths.',
      undefined,
      'That’s the line above, in numbers.',
      'It’s heavier, and length and note would be those of the old one.',
    ],
    right: (state) =>
      `The pitch is squared, so the unit weight grows by the square of the factor, ${MASS.toFixed(3)}, to ${formatDensity(own(state).linearDensity * MASS)}.`,
  },
};
