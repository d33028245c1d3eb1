/** One string of an instrument with another gauge: its note and where it lies stay. */
import type { Gauge, StringSpec } from './schema.ts';

export const regauged = (
  { note, from, course }: Pick<StringSpec, 'note' | 'from' | 'course'>,
  gauge: Gauge,
): StringSpec => ({ note, ...(from && { from }), ...(course && { course }), ...gauge });
