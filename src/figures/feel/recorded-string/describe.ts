/** The recorded string in words, and its data. */
import { formatLength, spokenNote } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { formatDrift, formatSmall } from '../../kit/stiff/words.ts';
import { modelCents, RUNGS, scaleLength, type View } from './recorded.ts';

const GAP = '\u00a0';

export const formatFret = (fret: number): string => (fret === 0 ? 'open' : `fret ${fret}`);

export const formatWire = (thousandths: number): string => String(Number(thousandths.toFixed(1)));

/** How far a rung stands off the model's, with the way that it goes. */
function formatOff(cents: number): string {
  const size = `${Math.abs(cents).toFixed(1)}${GAP}cents`;
  return Math.abs(cents) < 0.05
    ? `less than 0.1${GAP}cents`
    : `${size} ${cents > 0 ? 'sharp' : 'flat'}`;
}

export function describeShort({ recorded, wire, inharmonicity, farthest }: View): string {
  return `B is ${formatSmall(recorded.fit.inharmonicity)} as measured, and ${formatSmall(inharmonicity)} for a plain ${formatWire(wire)}. The rung furthest from the model’s is number ${farthest.n}, ${formatOff(farthest.cents)} of it.`;
}

export function describe(view: View, units: Units): string {
  const { recorded } = view;
  const top = formatDrift(modelCents({ inharmonicity: recorded.fit.inharmonicity }, RUNGS));
  return `Up the page, the first ${RUNGS} partials of a recorded string, ${spokenNote(recorded.note)}, ${formatFret(recorded.fret)}; to the right, how far each is above an even comb, up to ${top}. Beside them, the partials that the model gives a plain steel wire on a scale of ${formatLength(scaleLength, units)}. ${describeShort(view)}`;
}

export const head = [
  'partial',
  'measured / Hz',
  'measured / cents above even',
  'model / cents above even',
  'measured minus model / cents',
];

/** All partials of the note that stand in the table, also those above the drawing. */
export function recordedRows(view: View): readonly (readonly string[])[] {
  return view.recorded.partials.map(({ n, frequency, cents }) => {
    const model = modelCents(view, n);
    return [
      String(n),
      frequency.toFixed(2),
      cents.toFixed(2),
      model.toFixed(2),
      (cents - model).toFixed(2),
    ];
  });
}
