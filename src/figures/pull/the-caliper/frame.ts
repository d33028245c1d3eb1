import type { Units } from '../../../instrument/schema.ts';
import { thousandths } from '../../../physics/index.ts';

/** The caliper's sheet, 360 units wide: the wire's own diameter is drawn 96 units wide, whatever the wire. */
export const frame = {
  width: 360,
  height: 346,
  /** Inner face of the fixed jaw */
  jaw: 66,
  own: 96,
  beam: { top: 34, bottom: 60, left: 8, right: 352 },
  middle: 150,
  tip: 176,
  /** Of the dial, from the moving jaw's face */
  dial: { x: 78, y: 86, radius: 38 },
  dimension: 250,
  readings: 300,
} as const;

/** How a caliper is ruled: in thousandths of an inch, or in hundredths of a millimetre that are lettered in mm. */
export interface Ruling {
  /** Thousandths of an inch */
  readonly mark: number;
  /** For one turn of the dial's needle, which its face parts in twenty */
  readonly marksPerTurn: number;
  readonly letter: (marks: number) => string;
  /** What the jaw moves by with an arrow, with Shift and an arrow, and with a Page key, in marks */
  readonly moves: { readonly step: number; readonly fine: number; readonly page: number };
}

const inThousandths: Ruling = {
  mark: 1,
  marksPerTurn: 10,
  letter: String,
  moves: { step: 0.5, fine: 0.1, page: 2 },
};
const inHundredths: Ruling = {
  mark: thousandths(1e-5),
  marksPerTurn: 20,
  letter: (marks) => String(marks / 100),
  moves: { step: 1, fine: 0.1, page: 5 },
};

export const rulingOf = (units: Units): Ruling =>
  units === 'in-lb' ? inThousandths : inHundredths;

/** Ticks of the beam: marks from tick to tick, and from number to number, far enough apart to be read. */
export function ticksOf(perMark: number): { readonly step: number; readonly number: number } {
  const step = [1, 2, 5, 10, 20].find((n) => n * perMark >= 5) ?? 50;
  const number = [5, 10, 20, 50].find((n) => n * perMark >= 30) ?? 100;
  return { step, number };
}
