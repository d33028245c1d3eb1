/** The bridge in words, and forces and moments as the reader reads them. */
import { formatTotal, forceUnit, inUnits } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { inches, millimetres } from '../../../physics/index.ts';
import { LEVEL, type Moments } from './moments.ts';

/** A moment in pound-inches, newton-metres or kilogram-centimetres. */
export function formatMoment(newtonMetres: number, units: Units): string {
  const force = inUnits(newtonMetres, units);
  if (units === 'in-lb') return `${inches(force).toFixed(1)}\u00a0lb·in`;
  if (units === 'mm-kg') return `${(100 * force).toFixed(1)}\u00a0kg·cm`;
  return `${force.toFixed(2)}\u00a0N·m`;
}

/** A small length of a bridge, finer than a scale's. */
export const formatArm = (metres: number, units: Units): string =>
  units === 'in-lb'
    ? `${inches(metres).toFixed(3)}\u00a0in`
    : `${millimetres(metres).toFixed(1)}\u00a0mm`;

/** A spring's rate: force for each inch or millimetre. */
export const formatRate = (newtonsPerMetre: number, units: Units): string =>
  units === 'in-lb'
    ? `${(inUnits(newtonsPerMetre, units) * 0.0254).toFixed(1)}\u00a0lb/in`
    : `${inUnits(newtonsPerMetre / 1000, units).toFixed(units === 'mm-kg' ? 3 : 2)}\u00a0${forceUnit(units)}/mm`;

export const formatTurns = (turns: number): string =>
  `${Math.abs(turns).toFixed(1)}\u00a0${Math.abs(turns).toFixed(1) === '1.0' ? 'turn' : 'turns'}`;

export const isLevel = ({ excess }: Moments): boolean => Math.abs(excess) < LEVEL;

export function verdictOf(moments: Moments, count: number, broken: boolean): string {
  if (broken) return 'A string of this set breaks at its note, so there’s nothing to balance.';
  if (!moments.holds)
    return `${count} springs are too many for this pull: even closed they tip the bridge back. Take one out.`;
  if (isLevel(moments)) return 'Level: both sides turn equally hard.';
  const way = moments.excess > 0 ? 'towards the neck, its tail up' : 'back, its tail down';
  const turn = `${moments.toLevel > 0 ? 'Tighten' : 'Loosen'} the claw by ${formatTurns(moments.toLevel)}.`;
  return `It tips ${way}. ${turn}`;
}

export function describe(
  moments: Moments,
  { pull, count, broken, units }: { pull: number; count: number; broken: boolean; units: Units },
): string {
  const forces = broken
    ? ''
    : ` The strings pull ${formatTotal(pull, units)} above it and turn it with ${formatMoment(moments.strings, units)}; ${count} springs pull ${formatTotal(moments.force, units)} below it and turn it back with ${formatMoment(moments.springs, units)}.`;
  return `A floating bridge in section, on a knife edge.${forces} ${verdictOf(moments, count, broken)}`;
}
