/** The pressed string in words. */
import { spokenNote } from '../../../instrument/format.ts';
import type { Intoned } from '../../../instrument/intoned.ts';
import type { Units } from '../../../instrument/schema.ts';
import { inches, millimetres, type FretError } from '../../../physics/index.ts';
import { UNKNOWN } from '../../kit/setback.ts';
import { formatCents, formatSmall } from '../../kit/setback.ts';

/** A stretch, finer than any rule: thousandths of a millimetre, or ten-thousandths of an inch. */
export const formatStretch = (metres: number, units: Units): string =>
  units === 'in-lb'
    ? `${inches(metres).toFixed(4)}\u00a0in`
    : `${millimetres(metres).toFixed(3)}\u00a0mm`;

export interface Pressed {
  readonly held: Intoned | undefined;
  readonly fret: number;
  /** m */
  readonly height: number;
  readonly stretch: number;
  readonly error: FretError | undefined;
  readonly units: Units;
}

export function verdictOf({ held, fret, stretch, error, units }: Pressed): string {
  if (!held || !error) return UNKNOWN;
  const stiff = held.stiff ? `, its stiff end ${formatCents(error.stiffness)}` : '';
  // The sounding part runs aslant and is a trace longer than it is in plan.
  const slant = `, its slant ${formatCents(error.length)}`;
  const left = held.stiff ? '' : ' We don’t know its stiffness, and leave it out.';
  return `Pressed down at fret ${fret} the string gets ${formatStretch(stretch, units)} longer. That makes ${formatCents(error.tension + error.mass)}${stiff}${slant}: ${formatCents(error.total)} in all.${left}`;
}

export function describe(pressed: Pressed): string {
  const { held, height, units } = pressed;
  if (!held) return UNKNOWN;
  return `The ${spokenNote(held.pull.note)} string from the side, heights enlarged, ${formatSmall(height, units)} above the twelfth fret. ${verdictOf(pressed)}`;
}
