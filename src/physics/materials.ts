/**
 * Densities, moduli and strengths. Every constant names its entry in content/data/sources.yaml and how far it was followed:
 * `read` in a copy of the source, `second-hand` in a text that quotes it, `memory` recalled.
 */

export type SourceStatus = 'read' | 'second-hand' | 'memory';

export interface Constant {
  readonly value: number;
  /** Half-width of the range in which the true value is taken to lie, in the unit of `value`. */
  readonly tolerance: number;
  readonly source: string;
  readonly status: SourceStatus;
}

export interface Material {
  readonly name: string;
  /** kg/m³ */
  readonly density: Constant;
  /** Young's modulus, Pa */
  readonly modulus: Constant;
  readonly note?: string;
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

const steelDensity = callister(7850, 30);

export const materials = {
  musicWire: {
    name: 'music wire (plain high-carbon steel)',
    density: steelDensity,
    // Shigley gives 203.4 GPa below 0.032 in, as all strings' wires and cores are; the tolerance reaches the 200 of the next band.
    modulus: { value: 203.4 * GPa, tolerance: 3.5 * GPa, source: 'shigley', status: 'read' },
  },
  nickelPlatedSteel: {
    name: 'nickel-plated steel',
    // No handbook has an entry: steel, and a plating of unknown thickness inside the tolerance.
    density: { value: 7850, tolerance: 240, source: 'callister', status: 'read' },
    modulus: callister(207 * GPa, 5 * GPa),
    note: 'taken as steel; the plating is inside the tolerance',
  },
  nickel: {
    name: 'nickel, commercially pure',
    density: callister(8880, 30),
    modulus: callister(204 * GPa, 5 * GPa),
  },
  stainless430: {
    name: 'stainless steel, grade 430',
    density: { value: 7700, tolerance: 50, source: 'handbook-stainless', status: 'second-hand' },
    modulus: {
      value: 200 * GPa,
      tolerance: 5 * GPa,
      source: 'handbook-stainless',
      status: 'second-hand',
    },
  },
  phosphorBronze: {
    name: 'phosphor bronze',
    density: millSheet(8860, 50),
    modulus: millSheet(110 * GPa, 5 * GPa),
  },
  bronze8020: {
    name: '80/20 bronze',
    density: millSheet(8660, 50),
    modulus: millSheet(110 * GPa, 5 * GPa),
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
