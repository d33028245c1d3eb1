/**
 * Stress in the core against the tabulated minimum tensile strength of music wire, or against the wide range of a polymer.
 *
 * The table is ASTM A228's minimum, quoted by an industrial wire table. It is interpolated, never fitted: published
 * fits lie above the minimum at thin gauges, which is the unsafe side.
 */
import { coreArea, type Construction } from './construction.ts';
import { inRange, tensionRange } from './guard.ts';
import type { SourceStatus } from './materials.ts';
import { fromThousandths, inches, millimetres, thousandths } from './units.ts';

const KSI = 6.894757293168361e6; // Pa in a thousand pounds-force a square inch: POUND_FORCE / INCH² * 1000

/** Source id of the table in content/data/sources.yaml. */
export const strengthSource = 'astm-a228';

/** Wire diameter in thousandths of an inch, minimum tensile strength in ksi. */
const a228Minimum: readonly (readonly [number, number])[] = [
  [8, 399],
  [9, 393],
  [10, 387],
  [11, 382],
  [12, 377],
  [13, 373],
  [14, 369],
  [15, 365],
  [16, 362],
  [18, 356],
  [20, 350],
  [22, 345],
  [24, 341],
  [26, 337],
];

/** The share of the minimum strength above which a pick carries a caution: the elastic limit of music wire starts there (Shigley, 65-75 %). */
export const CAUTION_SHARE = 0.65;

/** The tabulated points, as diameter in m and strength in Pa. */
export const minimumStrengthTable: readonly {
  readonly diameter: number;
  readonly strength: number;
}[] = a228Minimum.map(([thou, ksi]) => ({ diameter: fromThousandths(thou), strength: ksi * KSI }));

/**
 * Minimum tensile strength in Pa of music wire of `diameter` m, interpolated linearly in the table.
 * Thinner than the table's first entry it is that entry's, which errs to the safe side since strength grows as wire thins;
 * thicker than its last there is no value: undefined.
 */
export function minimumStrength(diameter: number): number | undefined {
  const thou = thousandths(
    inRange('diameter', diameter, { min: 0, open: true, max: 0.02, unit: 'm' }),
  );
  const [first, last] = [a228Minimum[0], a228Minimum.at(-1)];
  if (!first || !last || thou > last[0] + 1e-9) return undefined;
  if (thou <= first[0]) return first[1] * KSI;
  for (let i = 1; i < a228Minimum.length; i += 1) {
    const low = a228Minimum[i - 1];
    const high = a228Minimum[i];
    if (low && high && thou <= high[0] + 1e-9) {
      return (low[1] + ((high[1] - low[1]) * (thou - low[0])) / (high[0] - low[0])) * KSI;
    }
  }
  return undefined;
}

/** A power law that somebody fitted to the strength of music wire: for drawings and cross-checks, never for a margin. */
export interface StrengthFit {
  readonly source: string;
  readonly status: SourceStatus;
  /** Pa, of wire of `diameter` m */
  readonly at: (diameter: number) => number;
}

/** Published fits of the ultimate strength; at thin gauges both lie above the tabulated minimum. Sources: their own. */
export const strengthFits: readonly StrengthFit[] = [
  // 201 ksi/d^0.145, d in inches
  {
    source: 'shigley',
    status: 'read',
    at: (diameter) => (201 * KSI) / inches(diameter) ** 0.145,
  },
  // 2153.5 MPa/d^0.1625, d in millimetres, from 0.3 mm up
  {
    source: 'handbook-wire',
    status: 'read',
    at: (diameter) => 2153.5e6 / millimetres(diameter) ** 0.1625,
  },
];

/** Stress in Pa in the wire, or in a wound string's core, which carries the pull alone. Undefined for a measured string. */
export function coreStress({
  construction,
  tension,
}: {
  construction: Construction;
  tension: number;
}): number | undefined {
  inRange('tension', tension, tensionRange);
  return construction.kind === 'measured' ? undefined : tension / coreArea(construction);
}

/** Tabulated minimum strength in Pa of a string's wire or core; undefined where the construction or the table gives no value. */
export function minimumCoreStrength(c: Construction): number | undefined {
  if (c.kind === 'measured') return undefined;
  const wire = c.kind === 'plain' ? c : c.core;
  return wire.material === 'musicWire' ? minimumStrength(wire.diameter) : undefined;
}

/**
 * Core stress as a share of the tabulated minimum strength: 1 is where a wire may break that only just meets the standard.
 * Undefined where the construction or the table gives no value. A hex core is judged by the round wire of its flats.
 */
export function strengthShare({
  construction,
  tension,
}: {
  construction: Construction;
  tension: number;
}): number | undefined {
  const stress = coreStress({ construction, tension });
  const strength = minimumCoreStrength(construction);
  return stress === undefined || strength === undefined ? undefined : stress / strength;
}

export type Strain = 'unknown' | 'sound' | 'caution' | 'broken';

/** The three states that a page shows, from a share of the minimum strength. */
export function strainState(share: number | undefined): Strain {
  if (share === undefined) return 'unknown';
  if (share > 1) return 'broken';
  return share > CAUTION_SHARE ? 'caution' : 'sound';
}
