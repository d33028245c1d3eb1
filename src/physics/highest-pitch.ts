/** How high a string of a length may be tuned before its core is at its strength. */
import { axialStiffness, coreArea, linearDensity, type Construction } from './construction.ts';
import { inRange, speakingLengthRange } from './guard.ts';
import { material } from './materials.ts';
import { CAUTION_SHARE, minimumCoreStrength } from './strength.ts';
import { frequency as frequencyOf } from './tension.ts';
import { thins } from './tuned.ts';

/**
 * Strength of the core's material in Pa, as a range: the tabulated minimum, twice, for music wire; low and high for a polymer.
 * Undefined for a measured string and for a metal or a diameter without a strength. Source: ASTM A228; the materials' own.
 */
export function strengthBounds(
  c: Construction,
): { readonly low: number; readonly high: number } | undefined {
  const minimum = minimumCoreStrength(c);
  if (minimum !== undefined) return { low: minimum, high: minimum };
  if (c.kind === 'measured') return undefined;
  const { strength } = material(c.kind === 'plain' ? c.material : c.core.material);
  return (
    strength && {
      low: strength.value - strength.tolerance,
      high: strength.value + strength.tolerance,
    }
  );
}

/**
 * The highest open pitch in Hz that leaves a string of this length within `share` of its strength (the caution's when not given).
 * `low` is the one to go by: from the tabulated minimum of wire, or from the weak end of a polymer's range; `high` is its strong end.
 * Undefined where no strength is known. Throws RangeError naming an argument that lies outside. Source: Mersenne's law and `strengthBounds`.
 */
export function highestFrequency({
  construction,
  speakingLength,
  share = CAUTION_SHARE,
}: {
  construction: Construction;
  /** m */
  speakingLength: number;
  share?: number;
}): { readonly low: number; readonly high: number } | undefined {
  inRange('speakingLength', speakingLength, speakingLengthRange);
  inRange('share', share, { min: 0, open: true, max: 1 });
  const strength = strengthBounds(construction);
  if (!strength || construction.kind === 'measured') return undefined;
  const [area, density] = [coreArea(construction), linearDensity(construction)];
  const at = (stress: number) => {
    const tension = share * stress * area;
    const strain = thins(construction) ? tension / axialStiffness(construction) : 0;
    return frequencyOf({ speakingLength, tension, linearDensity: density / (1 + strain) });
  };
  return { low: at(strength.low), high: at(strength.high) };
}
