/** The last millimetres in words. */
import { formatShare, spokenGauge, spokenNote } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { fromThousandths, inches, millimetres } from '../../../physics/index.ts';
import { missing } from '../../kit/stiff/words.ts';
import { isItsBare, type View } from '../../kit/stiff/stiff.ts';

/** An end's length: thousandths of an inch show nothing of it, so it has one digit more than a travel. */
export const formatEnd = (metres: number, units: Units): string =>
  units === 'in-lb'
    ? `${inches(metres).toFixed(3)}\u00a0in`
    : `${millimetres(metres).toFixed(2)}\u00a0mm`;

/** The end's length in thicknesses of the string. */
export const thicknesses = ({ pull, own }: View): string =>
  own ? (own.end / fromThousandths(pull.gauge.gauge)).toFixed(1) : '?';

export function describe(view: View, units: Units): string {
  const { pull, own, bare } = view;
  const string = `The ${spokenNote(pull.note)} string, ${spokenGauge(pull.gauge, units)}, where it leaves the saddle, enlarged.`;
  const gone = missing(view);
  if (gone || !own) return `${string} ${gone}`;
  const wire =
    bare && isItsBare(view)
      ? ` A bare wire of the same mass would need ${formatEnd(bare.end, units)}.`
      : '';
  return `${string} It vibrates as if it began ${formatEnd(own.end, units)} before the saddle, which is ${thicknesses(view)} of its thicknesses and ${formatShare(own.end / pull.speakingLength, 2)} of its length.${wire}`;
}
