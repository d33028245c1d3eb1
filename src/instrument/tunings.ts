/** Tunings that have a name. */
import data from '../../content/data/tunings.yaml';

export interface Tuning {
  readonly id: string;
  readonly name: string;
  readonly notes: readonly string[];
}

export const tunings: readonly Tuning[] = data as Tuning[];

/** The tuning that these notes make, if it has a name. */
export const tuningOf = (notes: readonly string[]): Tuning | undefined =>
  tunings.find(
    (t) => t.notes.length === notes.length && t.notes.every((note, i) => note === notes[i]),
  );
