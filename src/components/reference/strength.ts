/** Strength by diameter as lines and as curves, and what common strings reach of it. */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';

import { formatGauge, formatNote } from '../../instrument/format.ts';
import { pullsOf } from '../../instrument/pulls.ts';
import { workshop } from '../../instrument/workshop.ts';
import {
  CAUTION_SHARE,
  INCH,
  coreArea,
  fromThousandths,
  highestFrequency,
  inches,
  millimetres,
  minimumStrength,
  minimumStrengthTable,
  nearestNote,
  POUND_FORCE,
  poundsForce,
  strengthFits,
  thousandths,
  type Construction,
} from '../../physics/index.ts';

/** Pascals in a thousand pounds-force a square inch. */
const KSI = (1000 * POUND_FORCE) / INCH ** 2;
export const ksi = (pascals: number): number => pascals / KSI;

const LENGTH = 25.5 * INCH;
export const exampleLength = `${inches(LENGTH)}\u00a0in`;

export interface StrengthLine {
  readonly gauge: string;
  readonly millimetres: string;
  readonly ksi: string;
  readonly megapascals: string;
  /** lb and N, at which wire breaks that only just meets the standard */
  readonly pounds: string;
  readonly newtons: string;
  /** The highest note at the example's length that stays below the caution */
  readonly note: string;
  /** Per cent by which each published fit lies above (or, with a minus, below) the minimum */
  readonly fits: readonly string[];
}

const plain = (diameter: number): Construction => ({
  kind: 'plain',
  diameter,
  material: 'musicWire',
});

const signed = (share: number): string =>
  `${share < 0 ? '−' : '+'}${Math.abs(100 * share).toFixed(1)}`;

/** The highest note of the scale that is no higher than `frequency` Hz. */
function noteBelow(frequency: number): string {
  const { note, cents } = nearestNote(frequency);
  return formatNote(cents < 0 ? nearestNote(frequency * 2 ** (-1 / 12)).note : note);
}

export const strengthLines: readonly StrengthLine[] = minimumStrengthTable.map(
  ({ diameter, strength }) => {
    const wire = plain(diameter);
    const force = strength * coreArea({ kind: 'plain', diameter, material: 'musicWire' });
    const highest = highestFrequency({ construction: wire, speakingLength: LENGTH });
    return {
      gauge: String(Number(thousandths(diameter).toFixed(1))),
      millimetres: millimetres(diameter).toFixed(3),
      ksi: ksi(strength).toFixed(0),
      // The table has three figures in ksi: no more here.
      megapascals: (10 * Math.round(strength / 1e7)).toFixed(0),
      pounds: poundsForce(force).toFixed(1),
      newtons: force.toFixed(0),
      note: highest ? noteBelow(highest.low) : '',
      fits: strengthFits.map((fit) => signed(fit.at(diameter) / strength - 1)),
    };
  },
);

export interface ShareLine {
  readonly instrument: string;
  readonly string: string;
  readonly gauge: string;
  readonly ksi: string;
  /** Share of the minimum strength, 1 is all of it */
  readonly share: number;
}

/** The string of each workshop instrument that comes nearest to its strength, and the one that stays farthest from it. */
export const shareLines: readonly ShareLine[] = workshop
  .flatMap((instrument) => {
    const known = pullsOf(instrument).flatMap((p) =>
      p.share === undefined ? [] : [{ ...p, share: p.share }],
    );
    const sorted = known.sort((a, b) => b.share - a.share);
    const ends = [...new Set([sorted[0], sorted.at(-1)])];
    return ends.flatMap((p) =>
      p
        ? [
            {
              instrument: instrument.name,
              string: formatNote(p.note),
              gauge: formatGauge(p.gauge, 'in-lb'),
              ksi: ksi(
                p.tension / (p.construction.kind === 'measured' ? NaN : coreArea(p.construction)),
              ).toFixed(0),
              share: p.share,
            },
          ]
        : [],
    );
  })
  .sort((a, b) => b.share - a.share);

export const cautionPercent = `${(100 * CAUTION_SHARE).toFixed(0)}\u00a0%`;

/** The drawing's span: gauges in thousandths across, strength in ksi up. */
export const span = { left: 7, right: 27, low: 330, high: 420 } as const;

const BOX = 1000;
export const across = scaleLinear([span.left, span.right], [0, BOX]);
export const up = scaleLinear([span.low, span.high], [BOX, 0]);
const first = thousandths(minimumStrengthTable[0]?.diameter ?? NaN);
const last = thousandths(minimumStrengthTable.at(-1)?.diameter ?? NaN);
const STEPS = 72;

function pathOf(at: (diameter: number) => number | undefined): string {
  const drawn = line<{ thou: number; value: number | undefined }>()
    .defined(({ value }) => value !== undefined)
    .x(({ thou }) => across(thou))
    .y(({ value }) => up(ksi(value ?? NaN)))
    .digits(1);
  const points = Array.from({ length: STEPS + 1 }, (_, i) => {
    const thou = first + ((last - first) * i) / STEPS;
    return { thou, value: at(fromThousandths(thou)) };
  });
  return drawn(points) ?? '';
}

/** Curves and points in a box of 1000 by 1000. */
export const curves = {
  minimum: pathOf((diameter) => minimumStrength(diameter)),
  fits: strengthFits.map((fit) => ({ source: fit.source, path: pathOf(fit.at) })),
  points: minimumStrengthTable.map(({ diameter, strength }) => ({
    x: across(thousandths(diameter)),
    y: up(ksi(strength)),
  })),
  across: across.ticks(10).map((thou) => ({
    label: String(thou),
    at: across(thou) / 10,
  })),
  up: up.ticks(5).map((value) => ({
    label: String(value),
    other: ((value * KSI) / 1e9).toFixed(2),
    at: up(value) / 10,
  })),
};
