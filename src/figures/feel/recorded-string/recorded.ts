/** A string that was recorded at four frets, and what the model makes of it: partials of both, in cents above even ones. */
import data from '../../../../content/data/recorded-partials.yaml';
import { drawerOf } from '../../../instrument/drawer.ts';
import { once } from '../../../instrument/once.ts';
import type { State } from '../../../instrument/schema.ts';
import { gaugeHeard, type GaugeHeard } from '../../../physics/heard.ts';
import {
  bendingStiffness,
  centsOfPartial,
  fromThousandths,
  inharmonicity,
  linearDensity,
  stoppedLength,
  tension,
  type PlainString,
} from '../../../physics/index.ts';
import { fitStiff, type StiffFit } from '../../../physics/listening/stiff-fit.ts';

interface Table {
  /** m */
  readonly assumedScaleLength: number;
  readonly notes: readonly {
    readonly sample: string;
    readonly note: string;
    readonly fret: number;
    /** Number of the partial: Hz */
    readonly partials: Readonly<Record<string, number>>;
  }[];
}

export interface MeasuredPartial {
  readonly n: number;
  /** Hz */
  readonly frequency: number;
  /** Above n times the fitted fundamental */
  readonly cents: number;
}

export interface RecordedNote {
  readonly note: string;
  readonly fret: number;
  /** From the nut's scale, if it is the assumed one; m */
  readonly speakingLength: number;
  readonly fit: StiffFit;
  readonly partials: readonly MeasuredPartial[];
}

const table = data as Table;
export const scaleLength = table.assumedScaleLength;
/** How well a partial of such a sound is known: the same for all, so that anybody can fit the table anew. */
const DOUBT = 0.5;
/** Gauge that the figure begins with, thousandths */
export const USUAL_WIRE = 12;
/** Rungs that are drawn */
export const RUNGS = 28;

const doubtOf = (frequency: number): number => (DOUBT * Math.LN2 * frequency) / 1200;

/** Fits the law to a note's partials, all of them alike, or to those up to `most`. */
export function fitOf(
  partials: readonly Pick<MeasuredPartial, 'n' | 'frequency'>[],
  most = Infinity,
) {
  return fitStiff(
    partials
      .filter(({ n }) => n <= most)
      .map(({ n, frequency }) => ({ n, frequency, doubt: doubtOf(frequency) })),
  );
}

export const notes: readonly RecordedNote[] = table.notes.map(({ note, fret, partials }) => {
  const heard = Object.entries(partials).map(([n, frequency]) => ({ n: Number(n), frequency }));
  const fit = fitOf(heard);
  const speakingLength = stoppedLength({ scaleLength, fret });
  return {
    note,
    fret,
    speakingLength,
    fit,
    partials: heard.map(({ n, frequency }) => ({
      n,
      frequency,
      cents: 1200 * Math.log2(frequency / (n * fit.fundamental)),
    })),
  };
});

const wireOf = (thousandths: number): PlainString => ({
  kind: 'plain',
  diameter: fromThousandths(thousandths),
  material: 'musicWire',
});

/** B that the closed form gives a plain steel wire at the recorded note's length and pitch. */
export function modelled({ speakingLength, fit }: RecordedNote, wire: number): number {
  const string = wireOf(wire);
  const pull = tension({
    speakingLength,
    frequency: fit.fundamental,
    linearDensity: linearDensity(string),
  });
  return inharmonicity({
    speakingLength,
    tension: pull,
    bendingStiffness: bendingStiffness(string),
  });
}

/** How well a length is known where only the scale is assumed, as a share: a millimetre or two, its saddle's setback among them. */
const LENGTH_DOUBT = 0.003;

/** The gauge that a note tells, if the scale is the assumed one. */
export const heardGauge = ({ speakingLength, fit }: RecordedNote): GaugeHeard =>
  gaugeHeard({
    fundamental: fit.fundamental,
    inharmonicity: fit.inharmonicity,
    speakingLength,
    material: 'musicWire',
    drawer: drawerOf().gauges.plain.map(wireOf),
    doubts: {
      fundamental: fit.fundamentalDoubt,
      inharmonicity: fit.inharmonicityDoubt,
      speakingLength: LENGTH_DOUBT * speakingLength,
    },
  });

export interface View {
  readonly index: number;
  readonly recorded: RecordedNote;
  /** Thousandths */
  readonly wire: number;
  /** B of the model's string */
  readonly inharmonicity: number;
  /** Largest distance between a drawn rung and the model's, cents, and at which partial */
  readonly farthest: { readonly n: number; readonly cents: number };
}

/** Cents of the model's partial `n`. */
export const modelCents = ({ inharmonicity: b }: Pick<View, 'inharmonicity'>, n: number): number =>
  centsOfPartial({ inharmonicity: b, partial: n });

export const drawnPartials = ({ partials }: RecordedNote): readonly MeasuredPartial[] =>
  partials.filter(({ n }) => n <= RUNGS);

export const viewOf = once(({ trial: { drawn } }: Pick<State, 'trial'>): View => {
  const index = drawn?.recorded ?? 0;
  const recorded = notes[index] ?? notes[0];
  if (!recorded) throw new RangeError('notes is empty; permitted: a table with notes');
  const wire = drawn?.wire ?? USUAL_WIRE;
  const b = modelled(recorded, wire);
  let farthest = { n: 1, cents: 0 };
  for (const { n, cents } of drawnPartials(recorded)) {
    const off = cents - modelCents({ inharmonicity: b }, n);
    if (Math.abs(off) > Math.abs(farthest.cents)) farthest = { n, cents: off };
  }
  return { index, recorded, wire, inharmonicity: b, farthest };
});
