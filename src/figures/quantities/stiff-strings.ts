/** Numbers of the chapter "Stiff strings": the string in hand as tried out and as it is, and what holds for every reader. */
import { formatDensity, formatForce, formatLength, formatShare } from '../../instrument/format.ts';
import { pullOf } from '../../instrument/pulls.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import {
  bendingStiffnessBounds,
  fromInches,
  STANDARD_A4,
  thousandths,
} from '../../physics/index.ts';
import { formatDrift, formatSmall } from '../kit/stiff/words.ts';
import {
  bareStiffness,
  driftOf,
  ownStiffness,
  placeOf,
  viewOf,
  type Stiffness,
  type View,
} from '../kit/stiff/stiff.ts';
import { formatWire } from '../feel/recorded-string/describe.ts';
import {
  fitOf,
  heardGauge,
  notes,
  RUNGS,
  scaleLength,
  type RecordedNote,
} from '../feel/recorded-string/recorded.ts';
import { formatEnd } from '../feel/saddle-curve/describe.ts';
import { triedOf } from '../trial.ts';
import type { Quantity } from './common.ts';

const UNKNOWN = 'an unknown amount';

const live: Readonly<Record<string, Quantity>> = {
  'stiff.B': said((string) => formatSmall(string.inharmonicity)),
  'stiff.ten': said((string) => formatDrift(driftOf(string, 10))),
  'stiff.twenty': said((string) => formatDrift(driftOf(string, 20))),
  'stiff.end': said((string, s) => formatEnd(string.end, s.units)),
  'stiff.endShare': said((string, s) => formatShare(string.end / viewOf(s).pull.speakingLength, 2)),
  'stiff.wraps': (s) => {
    const { pull } = viewOf(s);
    const { high } = bendingStiffnessBounds(pull.construction);
    if (pull.construction.kind === 'measured')
      return 'We know only the weight of your string, not what its wraps add.';
    return pull.construction.kind === 'wound'
      ? `Counting how uncertain the core’s own stiffness is, those of your string could add up to ${formatShare(high)}.`
      : 'Your string has none.';
  },
};

/** Of the tried string, where its stiffness is known and it would hold. */
function said(text: (string: Stiffness, state: State) => string): Quantity {
  return (s) => {
    const { own, broken }: View = viewOf(s);
    if (broken) return 'more than it holds';
    return own ? text(own, s) : UNKNOWN;
  };
}

/** Of the string as it is on the instrument: what the exercises ask about. */
const asked =
  (text: (string: Stiffness, state: State) => string): Quantity =>
  (s) => {
    const string = ownStiffness(triedOf(s).own);
    return string ? text(string, s) : UNKNOWN;
  };

const exercises: Readonly<Record<string, Quantity>> = {
  'stiff.ownB': asked((string) => formatSmall(string.inharmonicity)),
  'stiff.ownTen': asked((string) => formatDrift(driftOf(string, 10))),
  'stiff.ownTenFactor': asked(({ inharmonicity: b }) => Math.sqrt(1 + 100 * b).toFixed(5)),
  'stiff.ownEighth': asked((string, s) =>
    oneDecimal(placeOf(string, 8) * triedOf(s).own.frequency),
  ),
  'stiff.ownEighthEven': (s) => oneDecimal(8 * triedOf(s).own.frequency),
  'stiff.ownEighthFactor': asked(({ inharmonicity: b }) => Math.sqrt(1 + 64 * b).toFixed(5)),
};

/** The point of the exercise is the little between two such frequencies. */
const oneDecimal = (hertz: number): string => `${hertz.toFixed(1)}\u00a0Hz`;

const number = (value: number | undefined, digits: number): string =>
  value === undefined ? '?' : value.toPrecision(digits);

const equation: Readonly<Record<string, Quantity>> = {
  'stiff.eq.EI': (s) => number((viewOf(s).own?.bending ?? NaN) * 1e6, 4).replace('NaN', '?'),
  'stiff.eq.T': (s) => viewOf(s).pull.tension.toFixed(1),
  'stiff.eq.L': (s) => viewOf(s).pull.speakingLength.toFixed(4),
  'stiff.eq.B': (s) => number((viewOf(s).own?.inharmonicity ?? NaN) * 1e6, 3).replace('NaN', '?'),
};

const STANDARD = fromInches(25.5);
const strung = (gauge: Gauge, note: string, speakingLength = STANDARD) =>
  pullOf({ gauge, note, a4: STANDARD_A4, speakingLength });
const known = (string: Stiffness | undefined): Stiffness => {
  if (!string) throw new RangeError('string has no known stiffness; permitted: one of the drawer');
  return string;
};
const low = strung({ kind: 'wound', gauge: 46 }, 'E2');
const lowOwn = known(ownStiffness(low));
const lowBare = known(bareStiffness(low));
const ten = known(ownStiffness(strung({ kind: 'plain', gauge: 10 }, 'E4')));
const third = known(ownStiffness(strung({ kind: 'plain', gauge: 17 }, 'G3')));
const thirdShort = known(ownStiffness(strung({ kind: 'plain', gauge: 17 }, 'G3', STANDARD / 2)));

/** The same for every reader. */
const constant: Readonly<Record<string, Quantity>> = {
  'stiff.c.lowTen': () => formatDrift(driftOf(lowOwn, 10)),
  'stiff.c.bareTen': () => formatDrift(driftOf(lowBare, 10)),
  'stiff.c.bareGauge': () => (bareStiffness(low)?.gauge ?? NaN).toFixed(0),
  'stiff.c.lowMass': () => formatDensity(low.linearDensity),
  'stiff.c.lowPull': (s) => formatForce(low.tension, s.units),
  'stiff.c.ratio': () => (lowBare.inharmonicity / lowOwn.inharmonicity).toFixed(0),
  'stiff.c.tenTen': () => formatDrift(driftOf(ten, 10)),
  'stiff.c.thirdTen': () => formatDrift(driftOf(third, 10)),
  'stiff.c.short': () => (thirdShort.inharmonicity / third.inharmonicity).toFixed(0),
};

const noteAt = (fret: number): RecordedNote => {
  const note = notes.find((each) => each.fret === fret);
  if (!note) throw new RangeError(`fret is ${fret}; permitted: one that was recorded`);
  return note;
};
const openString = noteAt(0);
/** In millionths, without the word */
const millionths = (b: number): string => formatSmall(b).split('\u00a0')[0] ?? '';
const bAt = (fret: number): string => millionths(noteAt(fret).fit.inharmonicity);
const timesAt = (fret: number, b: (note: RecordedNote) => number): string =>
  (b(noteAt(fret)) / b(openString)).toFixed(2);
const measuredAt = (fret: number): string => timesAt(fret, ({ fit }) => fit.inharmonicity);
const modelAt = (fret: number): string => timesAt(fret, ({ speakingLength: l }) => 1 / l ** 2);
const heard = heardGauge(openString);
/** Cents by which one of the first partials stands off the law at most. */
const mostOff = (last: number): number =>
  Math.max(
    ...notes.flatMap(({ partials, fit }) =>
      partials.flatMap(({ n }, i) => (n <= last ? [Math.abs(fit.off[i] ?? 0)] : [])),
    ),
  );

/** Of the recorded string: measured, and by the model. */
const recording: Readonly<Record<string, Quantity>> = {
  'stiff.rec.count': () => String(Math.max(...notes.map(({ partials }) => partials.length))),
  'stiff.rec.scale': (s) => formatLength(scaleLength, s.units),
  'stiff.rec.open': () => bAt(0),
  'stiff.rec.five': () => bAt(5),
  'stiff.rec.seven': () => bAt(7),
  'stiff.rec.twelve': () => bAt(12),
  'stiff.rec.times5': () => measuredAt(5),
  'stiff.rec.times7': () => measuredAt(7),
  'stiff.rec.times12': () => measuredAt(12),
  'stiff.rec.model5': () => modelAt(5),
  'stiff.rec.model7': () => modelAt(7),
  'stiff.rec.model12': () => modelAt(12),
  'stiff.rec.residual': () => formatDrift(Math.max(...notes.map(({ fit }) => fit.residual))),
  'stiff.rec.gauge': () =>
    `${thousandths(heard.diameter).toFixed(1)}\u00a0±\u00a0${thousandths(heard.doubt).toFixed(1)}`,
  'stiff.rec.left': () =>
    heard.remaining.map(({ diameter }) => `the ${formatWire(thousandths(diameter))}`).join(' and '),
  'stiff.rec.rungs': () => String(RUNGS),
  'stiff.rec.body': () => formatDrift(mostOff(3)),
  'stiff.rec.low': () => millionths(fitOf(openString.partials, 16).inharmonicity),
  'stiff.rec.longer': () => formatShare(1.01 ** 2 - 1),
};

export const quantities: Readonly<Record<string, Quantity>> = {
  ...live,
  ...exercises,
  ...equation,
  ...constant,
  ...recording,
};
