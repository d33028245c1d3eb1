/** The flags in words. */
import { spokenNote } from '../../../instrument/format.ts';
import type { Intoned } from '../../../instrument/intoned.ts';
import type { Units } from '../../../instrument/schema.ts';
import { formatCents, formatSmall, UNKNOWN } from '../../kit/setback.ts';

export interface Shown {
  readonly held: Intoned | undefined;
  readonly setback: number;
  readonly best: number;
  /** Cents at each fret, from the first */
  readonly errors: readonly number[];
  readonly units: Units;
}

export function verdictOf({ held, setback, best, errors }: Shown): string {
  if (!held) return UNKNOWN;
  const twelfth = errors[11] ?? 0;
  const away = setback - best;
  if (Math.abs(away) < 5e-5) return 'The best place for the first twelve frets.';
  const way = away < 0 ? 'back, away from the frets' : 'forward, towards the frets';
  const word = Math.abs(twelfth) < 0.05 ? 'in tune' : `${formatCents(twelfth)} off`;
  // How far is left to the hand: the flags say when it is there.
  return `At the twelfth fret ${word}. Over the first twelve frets, the saddle belongs further ${way}.`;
}

export function describe(shown: Shown): string {
  const { held, setback, errors, units } = shown;
  if (!held) return UNKNOWN;
  const named = [1, 5, 9, 12, 15].map((fret) => `${fret}: ${formatCents(errors[fret - 1] ?? 0)}`);
  return `The neck along the ${spokenNote(held.pull.note)} string, a flag at each fret for how sharp or flat it sounds. Saddle set back by ${formatSmall(setback, units)}. Frets ${named.join(', ')}. ${verdictOf(shown)}`;
}
