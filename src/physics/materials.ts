/**
 * Densities, moduli and strengths. Every constant names its entry in content/data/sources.yaml and how far it was followed:
 * `read` in a copy of the source, `second-hand` in a text that quotes it, `memory` recalled.
 */

import { diameterRange, inPositive } from './guard.ts';
import { INCH } from './units.ts';

export type SourceStatus = 'read' | 'second-hand' | 'memory';

export interface Constant {
  readonly value: number;
  /** Half-width of the range in which the true value is taken to lie, in the unit of `value`. */
  readonly tolerance: number;
  /** How far the true value may lie below, where that is not as far as above. */
  readonly below?: number;
  readonly source: string;
  readonly status: SourceStatus;
}

export interface Material {
  /** kg/m³ */
  readonly density: Constant;
  /** Young's modulus, Pa; of music wire it depends on the diameter, see `youngsModulus`; of a polymer also on its pull, see `modulusUnder` */
  readonly modulus: Constant;
  /** Tensile strength, Pa, where a wide range is all that is known; music wire has a table instead, in strength.ts */
  readonly strength?: Constant;
  readonly family: 'metal' | 'polymer';
}

const GPa = 1e9;

const callister = (value: number, tolerance: number): Constant => ({
  value,
  tolerance,
  source: 'callister',
  status: 'read',
});
const millSheet = (value: number, tolerance: number): Constant => ({
  value,
  tolerance,
  source: 'mill-sheet-bronze',
  status: 'read',
});

const handbook = (value: number, tolerance: number): Constant => ({
  value,
  tolerance,
  source: 'handbook-stainless',
  status: 'second-hand',
});
const pvdfLine = (value: number, tolerance: number): Constant => ({
  value,
  tolerance,
  source: 'pvdf-line',
  status: 'read',
});

const gut = (value: number, tolerance: number): Constant => ({
  value,
  tolerance,
  source: 'woodhouse-2019',
  status: 'second-hand',
});

const steelDensity = callister(7850, 30);

export const materials = {
  musicWire: {
    family: 'metal',
    density: steelDensity,
    // Shigley gives 203.4 GPa below 0.032 in, as all strings' wires and cores are; the tolerance reaches the 200 of the next band.
    modulus: { value: 203.4 * GPa, tolerance: 3.5 * GPa, source: 'shigley', status: 'read' },
  },
  nickelPlatedSteel: {
    family: 'metal',
    // No handbook has an entry: steel, and a plating of unknown thickness, which can only add weight. The range takes in a quarter
    // of it in nickel; wire for electronics is coated with 2 to 10 %, and exceptionally with 27 (astm-b559).
    density: { value: 7850, tolerance: 240, below: 30, source: 'callister', status: 'read' },
    modulus: callister(207 * GPa, 5 * GPa),
  },
  nickel: {
    family: 'metal',
    density: callister(8880, 30),
    modulus: callister(204 * GPa, 5 * GPa),
  },
  stainless430: {
    family: 'metal',
    density: handbook(7700, 50),
    modulus: handbook(200 * GPa, 5 * GPa),
  },
  stainless304: {
    family: 'metal',
    density: callister(8000, 50),
    modulus: callister(193 * GPa, 5 * GPa),
  },
  copper: {
    family: 'metal',
    // A plating of silver is denser by a sixth, and thin: inside the tolerance.
    density: { value: 8890, tolerance: 60, source: 'handbook-copper', status: 'second-hand' },
    modulus: {
      value: 115 * GPa,
      tolerance: 6 * GPa,
      source: 'handbook-copper',
      status: 'second-hand',
    },
  },
  phosphorBronze: {
    family: 'metal',
    density: millSheet(8860, 50),
    modulus: millSheet(110 * GPa, 5 * GPa),
  },
  phosphorBronze92: {
    family: 'metal',
    density: millSheet(8800, 60),
    modulus: millSheet(110 * GPa, 6 * GPa),
  },
  bronze8020: {
    family: 'metal',
    density: millSheet(8660, 50),
    modulus: millSheet(110 * GPa, 5 * GPa),
  },
  nylon: {
    family: 'polymer',
    density: { value: 1140, tolerance: 30, source: 'princeton-nylon', status: 'read' },
    // From slack up to pitch, over days. A string of it is drawn, and stiffer than the bulk's 1.6 to 3.8 GPa; the range holds both.
    // Once it pulls it resists by more: see `modulusUnder`.
    modulus: {
      value: 5 * GPa,
      tolerance: 3.4 * GPa,
      source: 'anderson-beausoleil-2024',
      status: 'read',
    },
    // Yarn bears 433 to 885 MPa, fine monofilament up to 984: the weakest string is taken a third weaker, for it is thicker and ages.
    strength: { value: 600e6, tolerance: 300e6, source: 'nylon-yarn', status: 'read' },
  },
  fluorocarbon: {
    family: 'polymer',
    density: pvdfLine(1780, 40),
    // Over weeks it stretches much as gut does, which was measured; the range holds the bulk's 2.1 GPa and a drawn film's 4.0.
    modulus: {
      value: 6 * GPa,
      tolerance: 4 * GPa,
      source: 'lynch-aird-woodhouse-2018',
      status: 'read',
    },
    // Knotted, such line bears 598 MPa and more, unknotted up to 1010: that is the best of it, and nothing was found on the weakest.
    strength: pvdfLine(680e6, 330e6),
  },
  gut: {
    family: 'polymer',
    // Twisted gut takes up water: its weight, and so its density, moves by some per cent with the air.
    density: gut(1320, 60),
    // The same at every pull, unlike nylon's: fitted lines through the origin hold to 0.999.
    modulus: gut(6 * GPa, 3.2 * GPa),
    // A metre of thin gut broke at 240 to 280 Hz, which is 304 to 414 MPa. The harder gut is twisted the sooner it breaks, and the
    // range reaches further on purpose.
    strength: { value: 350e6, tolerance: 120e6, source: 'gut-breaking-pitch', status: 'read' },
  },
} as const satisfies Readonly<Record<string, Material>>;

export type MaterialId = keyof typeof materials;

export const isMaterialId = (id: string): id is MaterialId => Object.hasOwn(materials, id);

/** Looks a material up; throws RangeError when the id is unknown. */
export function material(id: MaterialId): Material {
  if (!isMaterialId(id)) {
    throw new RangeError(
      `material is "${String(id)}"; permitted: ${Object.keys(materials).join(', ')}`,
    );
  }
  return materials[id];
}

/** Music wire by diameter: the largest diameter of each band in m, and Young's modulus in Pa. Source: Shigley, table 10-5. */
const musicWireBands = [
  { largest: 0.032 * INCH * (1 + 1e-9), modulus: 203.4 * GPa },
  { largest: 0.063 * INCH * (1 + 1e-9), modulus: 200 * GPa },
  { modulus: 196.5 * GPa },
] as const;

/**
 * Young's modulus in Pa of a wire of `diameter` m: the material's, and for music wire that of its band.
 * Throws RangeError when the material is unknown or the diameter is not positive. Source: as the material says.
 */
export function youngsModulus({
  material: id,
  diameter,
}: {
  material: MaterialId;
  diameter: number;
}): number {
  const { modulus } = material(id);
  inPositive('diameter', diameter, diameterRange);
  if (id !== 'musicWire') return modulus.value;
  const [thin, middle, thick] = musicWireBands;
  if (diameter <= thin.largest) return thin.modulus;
  return diameter <= middle.largest ? middle.modulus : thick.modulus;
}
