/** The pails in words. */
import {
  formatForce,
  formatLength,
  formatShare,
  spokenGauge,
  spokenNote,
} from '../../../instrument/format.ts';
import type { State, Units } from '../../../instrument/schema.ts';
import { triedOf } from '../../trial.ts';
import { fillOf, type Pail } from './pails.ts';

export type Fill = 'sound' | 'unsure' | 'broken';

/** Unsure where a weak string of a polymer would break and a strong one hold. */
export function fillState({ strength }: Pail, stress: number): Fill {
  if (stress > strength.high) return 'broken';
  return stress > strength.low ? 'unsure' : 'sound';
}

/** What a wire can hold, N, where the material is weakest. */
export const holds = ({ area, strength }: Pail): number => area * strength.low;

function pailWords(pail: Pail, length: number, frequency: number, units: Units): string {
  const { stress, pull } = fillOf(pail, length, frequency);
  const name = spokenGauge(pail.gauge, units);
  if (fillState(pail, stress) === 'broken') return `${name}: breaks`;
  const share = formatShare(stress / pail.strength.low);
  return `${name}: ${formatForce(pull, units)} of ${formatForce(holds(pail), units)}, ${share} full`;
}

export function describe(state: State, pails: readonly Pail[]): string {
  const { tried } = triedOf(state);
  const { speakingLength, frequency } = tried;
  const each = pails.map((p) => pailWords(p, speakingLength, frequency, state.units));
  return `Buckets as wide as the section that carries the pull, filled with the pull of ${spokenNote(tried.note)} at ${formatLength(speakingLength, state.units)}. ${each.join('; ')}.`;
}
