/** The small drawings of the index: each is its sheet's subject, worked out, in a box of 96 by 48. */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { fretPosition, layers, minimumStrengthTable, noteFrequency } from '../../physics/index.ts';
import { constructionOf } from '../../instrument/drawer.ts';
import type { ReferenceSheet } from './sheets.ts';

export interface Glyph {
  /** fine lines */
  readonly fine: string;
  /** heavy lines */
  readonly heavy: string;
}

const at = (n: number): string => n.toFixed(1);
const circle = (x: number, y: number, r: number): string =>
  `M${at(x - r)} ${at(y)}a${at(r)} ${at(r)} 0 1 0 ${at(2 * r)} 0a${at(r)} ${at(r)} 0 1 0 ${at(-2 * r)} 0`;

/** A box half filled with section lines. */
function hatched(): Glyph {
  const lines = Array.from({ length: 7 }, (_, i) => `M${8 + 11 * i} 40l14 -32`).join('');
  return { fine: lines, heavy: 'M4 8H92V40H4Z' };
}

/** The A's of the table, on an even scale of hertz: each octave twice as far as the one before. */
function octaves(): Glyph {
  const top = noteFrequency('A6');
  const along = scaleLinear([0, top], [4, 92]);
  const xs = [1, 2, 3, 4, 5, 6].map((octave) => along(noteFrequency(`A${octave}`)));
  return { fine: xs.map((x) => `M${at(x)} 14V34`).join(''), heavy: 'M4 24H92' };
}

/** A wound string cut across. */
function section(): Glyph {
  const wound = constructionOf({ kind: 'wound', gauge: 100 });
  const radii =
    wound.kind === 'wound' ? layers(wound).map(({ inner }) => (22 * inner) / wound.diameter) : [];
  return { fine: radii.map((r) => circle(48, 24, r)).join(''), heavy: circle(48, 24, 22) };
}

function strength(): Glyph {
  const first = minimumStrengthTable[0];
  const last = minimumStrengthTable.at(-1);
  if (!first || !last) throw new RangeError('the table of strengths is empty');
  const along = scaleLinear([first.diameter, last.diameter], [8, 92]);
  const down = scaleLinear([first.strength, last.strength], [8, 36]);
  const path = line<(typeof minimumStrengthTable)[number]>()
    .x(({ diameter }) => along(diameter))
    .y(({ strength: s }) => down(s))
    .digits(1);
  return { fine: 'M4 4V44H92', heavy: path(minimumStrengthTable) ?? '' };
}

function frets(): Glyph {
  const along = scaleLinear([0, 1], [4, 119]);
  const xs = Array.from({ length: 24 }, (_, i) =>
    along(fretPosition({ scaleLength: 1, fret: i + 1 })),
  );
  return { fine: xs.map((x) => `M${at(x)} 12V36`).join(''), heavy: 'M4 10V38M4 12H92M4 36H92' };
}

/** A length between its two stops. */
function dimension(): Glyph {
  return { fine: 'M4 24H92M4 24l8 -3v6zM92 24l-8 -3v6z', heavy: 'M4 12V36M92 12V36' };
}

export const glyphs: Readonly<Record<ReferenceSheet['id'], Glyph>> = {
  materials: hatched(),
  pitch: octaves(),
  'unit-weight': section(),
  strength: strength(),
  frets: frets(),
  // Strings of several lengths that end at one saddle.
  instruments: {
    fine: 'M20 12H88M20 18H88M20 30H88M40 36H88',
    heavy: 'M20 8V40M88 8V40',
  },
  model: dimension(),
};
