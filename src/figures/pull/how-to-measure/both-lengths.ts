import { formatLength } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';

/** Both units, the reader's first: a scale length is named in inches and measured in millimetres. */
export const bothLengths = (metres: number, units: Units): string => {
  const other = units === 'in-lb' ? 'mm-N' : 'in-lb';
  return `${formatLength(metres, units)} · ${formatLength(metres, other)}`;
};
