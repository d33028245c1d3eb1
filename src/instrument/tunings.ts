/** Tunings that have a name. */
import data from '../../content/data/tunings.yaml';
import { noteNumber } from '../physics/index.ts';

export interface Tuning {
  readonly id: string;
  readonly name: string;
  readonly notes: readonly string[];
}

export const tunings: readonly Tuning[] = data as Tuning[];

/** The tuning that these notes make, if it has a name. */
export const tuningOf = (notes: readonly string[]): Tuning | undefined =>
  tunings.find(
    (t) =>
      t.notes.length === notes.length &&
      t.notes.every((note, i) => noteNumber(note) === noteNumber(notes[i] ?? '')),
  );
