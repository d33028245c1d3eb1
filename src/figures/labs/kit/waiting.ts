/** Which reading the next pluck belongs to: the first that has everything but its pitch, else a new one. */
import type { Reading } from './rows.svelte.ts';

export interface Waiting {
  /** Undefined for a new one */
  readonly id: string | undefined;
  readonly number: number;
  readonly values: Readonly<Record<string, number>>;
}

export function waitingForPitch(readings: readonly Reading[]): Waiting {
  const at = readings.findIndex(({ values }) => values.frequency === undefined);
  const found = readings[at];
  return found
    ? { id: found.id, number: at + 1, values: found.values }
    : { id: undefined, number: readings.length + 1, values: {} };
}

/** What may be told to the ear of the pitch that comes: Hz within its range, or nothing. */
export const expected = (frequency: number | undefined): number | undefined =>
  frequency !== undefined && frequency >= 30 && frequency <= 700 ? frequency : undefined;
