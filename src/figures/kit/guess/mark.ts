/** A mark that a reader puts into a drawing, and which of several a finger on the sheet means. */
import type { Parsed } from '../../../instrument/parse.ts';
import type { Span } from '../slide.ts';

export interface Mark extends Span {
  readonly name: string;
  /** What it stands for: "Pull at half the length" */
  readonly label: string;
  /** Where it stands, in the drawing's units */
  readonly x: number;
  readonly y: number;
  readonly axis: 'x' | 'y';
  /** Units of the drawing for one unit of value */
  readonly unitsPerValue: number;
  readonly stops?: readonly number[];
  /** The value as it is shown, with its unit */
  readonly text: string;
  readonly spoken?: string;
  readonly parse: (typed: string) => Parsed<number>;
  /** Width of the field, in characters */
  readonly size?: number;
}

export interface Touched {
  readonly mark: number;
  readonly value: number;
}

/** The mark that lies nearest to a place across the way it goes, and the value that the place gives it. */
export function touchedAt(marks: readonly Mark[], x: number, y: number): Touched | undefined {
  const off = ({ axis, x: mx, y: my }: Mark): number => Math.abs(axis === 'y' ? mx - x : my - y);
  const nearest = marks.reduce<number>(
    (best, mark, i) => (best < 0 || off(mark) < off(marks[best] as Mark) ? i : best),
    -1,
  );
  const mark = marks[nearest];
  if (!mark) return undefined;
  return { mark: nearest, value: valueAt(mark, x, y) };
}

/** The value that a mark would have at a place. */
function valueAt(mark: Mark, x: number, y: number): number {
  const far = (mark.axis === 'y' ? y - mark.y : x - mark.x) / mark.unitsPerValue;
  // A mark stands at its value, so a place is told by how far off the mark it is.
  const asked = mark.value + far;
  if (mark.stops)
    return mark.stops.reduce((a, b) => (Math.abs(b - asked) < Math.abs(a - asked) ? b : a));
  const snapped = Number((Math.round(asked / mark.fine) * mark.fine).toPrecision(12));
  return Math.min(mark.max, Math.max(mark.min, snapped));
}
