/** Strings by the instruments they are made for, as constructions in SI units, built from content/data/strings.yaml. */
import strings from '../../content/data/strings.yaml';
import {
  fromGramsPerMetre,
  fromThousandths,
  type Construction,
  type MaterialId,
} from '../physics/index.ts';
import type { Family } from './family-names.ts';

type Pair = readonly [number, number];

interface FamilyData {
  readonly material: { readonly plain: MaterialId; readonly core: MaterialId };
  readonly acoustic: {
    readonly plain: readonly number[];
    readonly wound: readonly Pair[];
  };
  readonly wound: readonly (readonly [number, number, ...number[]])[];
  readonly plain: readonly number[];
  readonly violin: {
    readonly plain: readonly number[];
    readonly gut: readonly number[];
    readonly wound: readonly Pair[];
    readonly gutWound: readonly Pair[];
  };
  readonly classical: {
    readonly nylon: readonly number[];
    readonly fluorocarbon: readonly number[];
    readonly multifilament: { readonly axialStiffness: number; readonly wound: readonly Pair[] };
  };
}

const data = strings as unknown as FamilyData;

const plainOf = (id: MaterialId) => (gauge: number) =>
  ({ kind: 'plain', diameter: fromThousandths(gauge), material: id }) satisfies Construction;

const woundOf =
  (wrap: MaterialId) =>
  ([gauge, core, ...inner]: readonly [number, number, ...number[]]) =>
    ({
      kind: 'wound',
      diameter: fromThousandths(gauge),
      core: { shape: 'hex', diameter: fromThousandths(core), material: data.material.core },
      wraps: [
        ...inner.map((wire) => ({ diameter: fromThousandths(wire), material: wrap })),
        { material: wrap },
      ],
    }) satisfies Construction;

const { acoustic, classical, violin } = data;
const { multifilament } = classical;

/** Known by its weight; how it stretches where that was measured. */
const weighedOf =
  (axialStiffness?: number) =>
  ([gauge, unitWeight]: Pair) =>
    ({
      kind: 'measured',
      diameter: fromThousandths(gauge),
      linearDensity: fromGramsPerMetre(unitWeight),
      axialStiffness,
    }) satisfies Construction;

/** Each family from thin to thick, plain ones first. */
export const families = {
  'electric, pure nickel': electric('nickel'),
  'electric, stainless steel': electric('stainless430'),
  'acoustic, phosphor bronze': steel('phosphorBronze'),
  'acoustic, 80/20 bronze': steel('bronze8020'),
  'classical, nylon': soft('nylon'),
  'classical, fluorocarbon': soft('fluorocarbon'),
  'violin, steel': [
    ...violin.plain.map(plainOf(data.material.plain)),
    ...violin.wound.map(weighedOf()),
  ],
  'violin, gut': [...violin.gut.map(plainOf('gut')), ...violin.gutWound.map(weighedOf())],
} as const satisfies Readonly<Record<Family, readonly Construction[]>>;

function electric(wrap: MaterialId): readonly Construction[] {
  return [...data.plain.map(plainOf(data.material.plain)), ...data.wound.map(woundOf(wrap))];
}

function steel(wrap: MaterialId): readonly Construction[] {
  return [
    ...acoustic.plain.map(plainOf(data.material.plain)),
    ...acoustic.wound.map(woundOf(wrap)),
  ];
}

function soft(treble: 'nylon' | 'fluorocarbon'): readonly Construction[] {
  return [
    ...classical[treble].map(plainOf(treble)),
    ...multifilament.wound.map(weighedOf(multifilament.axialStiffness)),
  ];
}
