/** The moduli that grow with the pull, each number with its source: for tables. What works with them is in `under-pull.ts`. */
import type { Constant, MaterialId, SourceStatus } from './materials.ts';
import { growingModuli, type Growing, type Quickness } from './under-pull.ts';

export interface GrowingModulus {
  /** E0, Pa */
  readonly atRest: Constant;
  /** k, Pa of modulus for each Pa of stress */
  readonly growth: Constant;
}

const sources: Readonly<Record<Quickness, { source: string; status: SourceStatus }>> = {
  stretched: { source: 'anderson-beausoleil-2024', status: 'read' },
  vibrating: { source: 'woodhouse-2019', status: 'second-hand' },
};
/** Pa; what a string bears under a guitar's pull makes this small beside the growth. */
const AT_REST_TOLERANCE = 0.5e9;

const constants = ([atRest, growth, tolerance]: Growing, asked: Quickness): GrowingModulus => ({
  atRest: { value: atRest, tolerance: AT_REST_TOLERANCE, ...sources[asked] },
  growth: { value: growth, tolerance, ...sources[asked] },
});

export interface UnderPull {
  readonly material: MaterialId;
  readonly asked: Quickness;
  readonly modulus: GrowingModulus;
}

export const underPull: readonly UnderPull[] = Object.entries(growingModuli).flatMap(
  ([material, known]) =>
    (['stretched', 'vibrating'] as const).map((asked) => ({
      material: material as MaterialId,
      asked,
      modulus: constants(known[asked], asked),
    })),
);
