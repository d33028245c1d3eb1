/** The exercises of "Stiff strings". */
import { formatLength, gaugeNumber } from '../../instrument/format.ts';
import { pullOf, pullsOf, type Pull } from '../../instrument/pulls.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import {
  bendingStiffness,
  centsOfPartial,
  fromInches,
  inharmonicity,
  millimetres,
  STANDARD_A4,
} from '../../physics/index.ts';
import type { Answers } from '../types.ts';

function inHand({ mine, trial }: State): Pull {
  const pull = pullsOf(mine)[Math.min(trial.string, mine.strings.length - 1)];
  if (!pull) throw new RangeError('mine.strings is empty; permitted: at least one string');
  return pull;
}

/** Throws RangeError, as the module does, where nobody has said how stiff the string is. */
const coefficient = ({ construction, speakingLength, tension }: Pull): number =>
  inharmonicity({
    speakingLength,
    tension,
    bendingStiffness: bendingStiffness(construction, tension),
  });

const cents = (s: State, partial: number): number =>
  centsOfPartial({ inharmonicity: coefficient(inHand(s)), partial });

const STANDARD = fromInches(25.5);
const strung = (gauge: Gauge, note: string, speakingLength = STANDARD): Pull =>
  pullOf({ gauge, note, a4: STANDARD_A4, speakingLength });

const plain = (gauge: number): Gauge => ({ kind: 'plain', gauge });
const ordered: readonly { gauge: Gauge; note: string; length: number }[] = [
  { gauge: plain(10), note: 'E4', length: STANDARD },
  { gauge: plain(13), note: 'B3', length: STANDARD },
  { gauge: plain(17), note: 'G3', length: STANDARD },
  { gauge: plain(17), note: 'G3', length: fromInches(22.5) },
  { gauge: plain(24), note: 'G3', length: STANDARD },
];

/** Factors by which each change multiplies B of a plain string. */
const changes: readonly { id: string; label: string; factor: number }[] = [
  { id: 'gauge', label: 'Half the gauge, at the same length and note', factor: 1 / 4 },
  { id: 'length', label: 'Twice the length, at the same gauge and note', factor: 1 / 16 },
  { id: 'note', label: 'An octave up, at the same gauge and length', factor: 1 / 4 },
  { id: 'pull', label: 'Half the length and an octave up, at the same gauge', factor: 4 },
];

/** The worked sheet of a plain 17; one line forgets the root. */
function sheet(): { readonly lines: readonly string[]; readonly right: string } {
  const pull = strung(plain(17), 'G3');
  const { construction, tension, speakingLength } = pull;
  const bending = bendingStiffness(construction, tension);
  const b = coefficient(pull);
  const n = 12;
  const wrong = 1 + b * n * n;
  const right = Math.sqrt(wrong);
  const asCents = (factor: number): string => (1200 * Math.log2(factor)).toFixed(1);
  return {
    lines: [
      `The wire is d = ${millimetres(construction.diameter).toFixed(4)} mm thick; E I = E × π d⁴ / 64 = ${bending.toPrecision(4)} N m².`,
      `At a pull of ${tension.toFixed(1)} N and a length of ${speakingLength.toFixed(4)} m, B = π² E I / (T L²) = ${b.toPrecision(4)}.`,
      `Partial ${n} stands higher than ${n} times the pitch by the factor 1 + B n² = 1 + ${b.toPrecision(4)} × ${n * n} = ${wrong.toFixed(5)}.`,
      `In cents that is 1200 × log₂ ${wrong.toFixed(5)} = ${asCents(wrong)}.`,
    ],
    right: `The factor is the root, √(1 + B n²) = ${right.toFixed(5)}, which makes ${asCents(right)} cents: half of what the sheet says.`,
  };
}

export const answers: Answers = {
  'stiff-strings.cents': {
    kind: 'numeric',
    quantity: 'number',
    answer: (s) => cents(s, 10),
    tolerance: 0.03,
    mistakes: [
      {
        value: (s) => 2 * cents(s, 10),
        hint: 'That’s twice too much. The factor is a root: √(1 + B n²), not 1 + B n².',
      },
      {
        value: (s) => centsOfPartial({ inharmonicity: 10 * coefficient(inHand(s)), partial: 1 }),
        hint: 'The number of the partial is squared: n², not n.',
      },
      {
        value: (s) => cents(s, 1),
        hint: 'That’s the drift of the first partial. For the tenth, n = 10.',
      },
    ],
  },
  'stiff-strings.eighth': {
    kind: 'numeric',
    quantity: 'frequency',
    answer: (s) => 8 * inHand(s).frequency * Math.sqrt(1 + 64 * coefficient(inHand(s))),
    tolerance: 0.0002,
    mistakes: [
      {
        value: (s) => 8 * inHand(s).frequency,
        hint: 'That’s the tooth of the comb, eight times the pitch. How far above it is the rung?',
      },
      {
        value: (s) => 8 * inHand(s).frequency * (1 + 64 * coefficient(inHand(s))),
        hint: 'The root is missing. The factor is √(1 + B n²).',
      },
      {
        value: (s) => 7 * inHand(s).frequency * Math.sqrt(1 + 49 * coefficient(inHand(s))),
        hint: 'That’s partial 7. The pitch itself counts as partial 1.',
      },
      {
        value: (s) => 256 * inHand(s).frequency,
        hint: 'That’s eight octaves up. Partial 8 is eight times the frequency, three octaves.',
      },
    ],
  },
  'stiff-strings.change': {
    kind: 'choose',
    options: () => changes,
    answer: () => changes.reduce((best, next) => (next.factor < best.factor ? next : best)).id,
    hints: (_, id) =>
      ({
        gauge: 'That helps: d is squared, so a quarter of B is left. Does another change do more?',
        note: 'That helps: an octave up is four times the pull, so a quarter of B is left. Does another change do more?',
        pull: 'The pull stays, because length and pitch cancel. But B also has the length squared on its own. What happens to B?',
      })[id],
  },
  'stiff-strings.order': {
    kind: 'order',
    items: (s) =>
      ordered.map(({ gauge, note, length }) => ({
        id: `${note}-${gauge.gauge}-${length.toFixed(3)}`,
        label: `${note}, plain ${gaugeNumber(gauge.gauge, s.units)}, ${formatLength(length, s.units)}`,
        value: coefficient(strung(gauge, note, length)),
      })),
    ends: ['smallest B', 'largest B'],
    hint: 'B grows with the gauge squared, and falls with the fourth power of the length and the square of the pitch. Which strings are thick, short and low?',
  },
  'stiff-strings.sheet': {
    kind: 'mistake',
    lines: () => sheet().lines,
    wrong: 2,
    hints: [
      'It’s the bending stiffness of a round wire.',
      'Check the units: N m² over N m² leaves none.',
      undefined,
      'The step from a factor to cents is right. Is the factor?',
    ],
    right: () => sheet().right,
  },
};
