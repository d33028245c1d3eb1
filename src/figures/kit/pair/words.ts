/** The two necks in words, which the bench says too. */
import { formatLength } from '../../../instrument/format.ts';
import type { State, Units } from '../../../instrument/schema.ts';

const MINUS = '\u2212';

/** A difference of two lengths with its sign: +1 in, −0.5 in. */
export function signedLength(metres: number, units: Units): string {
  const size = formatLength(Math.abs(metres), units);
  if (Number.parseFloat(size) === 0) return `±${size}`;
  return `${metres > 0 ? '+' : MINUS}${size}`;
}

const scaleText = ({ treble, bass }: State['mine']['scale'], units: Units): string =>
  treble === bass
    ? formatLength(treble, units)
    : `${formatLength(treble, units)} to ${formatLength(bass, units)}`;

export function describeNecks({ mine, other, units }: State): string {
  const by = other.scale.treble - mine.scale.treble;
  return (
    `Two necks drawn with their nuts in line. ${mine.name || 'Your instrument'}, which feels right, has a scale length of ` +
    `${scaleText(mine.scale, units)}; ${other.name || 'the other'}, to be strung, has ${scaleText(other.scale, units)}, ` +
    `${signedLength(by, units)}.`
  );
}
