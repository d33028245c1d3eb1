/** The bend's sheet: the neck from above, much larger across than along, so that a millimetre of travel can be seen. */
import { breadthOf } from '../../../instrument/breadth.ts';
import { acrossOf } from '../../../instrument/courses.ts';
import { neckOf, type Ends, type Neck } from '../../kit/neck.ts';
import type { Instrument } from '../../../instrument/schema.ts';
import { EDGE, stringsApart } from '../../kit/bend/bent.ts';
import { acrossAt } from '../../kit/strings.ts';

interface Plan {
  readonly name: 'phone' | 'wide';
  readonly width: number;
  readonly left: number;
  readonly right: number;
  /** Units of drawing for a metre across */
  readonly across: number;
  readonly top: number;
  readonly weight: { readonly x: number; readonly width: number; readonly tallest: number };
  /** Right edges of the columns: travel and push */
  readonly columns: readonly [number, number];
  /** Longest name, in letters */
  readonly letters: number;
  readonly size: number;
  /** Strings are drawn this much thicker than elsewhere */
  readonly thick: number;
}

export const phone: Plan = {
  name: 'phone',
  width: 360,
  left: 40,
  right: 288,
  across: 3300,
  top: 44,
  weight: { x: 328, width: 40, tallest: 128 },
  columns: [234, 292],
  letters: 13,
  size: 12.5,
  thick: 1.2,
};

export const wide: Plan = {
  name: 'wide',
  width: 1040,
  left: 74,
  right: 872,
  across: 4600,
  top: 50,
  weight: { x: 962, width: 76, tallest: 200 },
  columns: [520, 640],
  letters: 30,
  size: 15.5,
  thick: 1.7,
};

export interface Frame extends Plan {
  readonly neck: Neck;
  readonly perMetre: number;
  /** Lower edge of the board, the rail of the frets, the ruler, the first row of words, and the foot */
  readonly bottom: number;
  readonly rail: number;
  readonly ruler: number;
  readonly words: number;
  readonly height: number;
  /** Along, of a place in m from the highest string's nut */
  readonly x: (metres: number) => number;
  /** Along, where a line through its places in m at the outer strings meets the board's two edges */
  readonly edges: (line: Ends) => readonly [top: number, bottom: number];
  /** Across, of string `index`, pushed aside by `travel` m towards the lowest string */
  readonly y: (index: number, travel?: number) => number;
}

export const FRETS = 24;

/** The sheet of an instrument on which a string of `ghost` m has to find room as well. */
export function frameOf(instrument: Instrument, ghost: number, plan: Plan): Frame {
  const neck = neckOf(instrument, FRETS);
  const from = Math.min(...neck.strings.map((s) => s.nut));
  const to = Math.max(...neck.strings.map((s) => Math.max(s.saddle, s.nut + ghost)));
  const perMetre = (plan.right - plan.left) / (to - from);
  const { strings } = instrument;
  const breadth = breadthOf(strings) * stringsApart(instrument);
  const across = acrossOf(strings);
  const high = plan.top + EDGE * plan.across;
  const bottom = plan.top + (2 * EDGE + breadth) * plan.across;
  const rail = bottom + 48;
  const ruler = rail + 62;
  const words = ruler + (plan.name === 'wide' ? 76 : 58);
  const x = (metres: number): number => plan.left + (metres - from) * perMetre;
  // Of a single string nothing lies between the outer ones.
  const pad = strings.length > 1 ? EDGE / breadth : 0;
  return {
    ...plan,
    neck,
    perMetre,
    bottom,
    rail,
    ruler,
    words,
    height: words + 2 * 21 + 6,
    x,
    edges: ({ treble, bass }) => [
      x(acrossAt(-pad, treble, bass)),
      x(acrossAt(1 + pad, treble, bass)),
    ],
    y: (index, travel = 0) =>
      high + ((strings.length > 1 ? (across[index] ?? 0) * breadth : 0) + travel) * plan.across,
  };
}
