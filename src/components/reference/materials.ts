/** The module's materials and constants as the lines of a table, every digit taken from the module. */
import {
  CAUTION_SHARE,
  feltThresholds,
  fromThousandths,
  INCH,
  materialNames,
  materialNotes,
  materials,
  nylonLosses,
  POUND,
  STANDARD_A4,
  STANDARD_GRAVITY,
  steelExpansion,
  strengthSource,
  underPull,
  wireTolerance,
  wireToleranceSource,
  type Constant,
  type Material,
  type MaterialId,
  type SourceStatus,
} from '../../physics/index.ts';
import { source } from '../sources.ts';

export interface Entry {
  readonly text: string;
  /** How far either way, in the unit of the text */
  readonly tolerance: string;
  readonly source: string;
  readonly status: SourceStatus;
}

export interface MaterialLine {
  readonly name: string;
  readonly note: string | undefined;
  readonly density: Entry;
  readonly modulus: Entry;
  readonly strength: Entry | undefined;
}

const entry = (c: Constant, unit: number, digits: number): Entry => ({
  text: (c.value / unit).toFixed(digits),
  tolerance:
    c.below === undefined
      ? `up to ${(c.tolerance / unit).toFixed(digits)}`
      : `+ ${(c.tolerance / unit).toFixed(digits)}, − ${(c.below / unit).toFixed(digits)}`,
  source: c.source,
  status: c.status,
});

export const materialLines: readonly MaterialLine[] = Object.entries<Material>(materials).map(
  ([id, m]) => ({
    name: materialNames[id as MaterialId],
    note: materialNotes[id as MaterialId],
    density: entry(m.density, 1, 0),
    modulus: entry(m.modulus, 1e9, 1),
    strength: m.strength && entry(m.strength, 1e6, 0),
  }),
);

export interface UnderPullLine {
  readonly name: string;
  /** What is asked of the string */
  readonly asked: string;
  readonly atRest: Entry;
  readonly growth: Entry;
}

/** The moduli that grow with the pull: stretched a little further, and swinging. */
export const underPullLines: readonly UnderPullLine[] = underPull.map(
  ({ material, asked, modulus: { atRest, growth } }) => ({
    name: materialNames[material],
    asked: asked === 'stretched' ? 'stretched, within minutes' : 'sounding',
    atRest: entry(atRest, 1e9, 1),
    growth: entry(growth, 1, 0),
  }),
);

export interface ConstantLine {
  readonly name: string;
  readonly value: string;
  readonly source: string;
  readonly status: SourceStatus;
}

const percent = (share: number): string => `${(100 * share).toFixed(0)}\u00a0%`;
const cited = (id: string) => ({ source: id, status: source(id).status });
const withTolerance = (c: Constant, unit: number, digits: number): string =>
  `${(c.value / unit).toFixed(digits)}, up to ${(c.tolerance / unit).toFixed(digits)} either way`;

/** Diameters in thousandths at which the permitted variation is worth printing: one in each band that strings use. */
const BANDS = [10, 26, 46] as const;

export const constantLines: readonly ConstantLine[] = [
  { name: 'Inch', value: `${INCH}\u00a0m, exact`, ...cited('nist-sp-811') },
  { name: 'Pound', value: `${POUND}\u00a0kg, exact`, ...cited('nist-sp-811') },
  {
    name: 'Standard gravity',
    value: `${STANDARD_GRAVITY}\u00a0m/s², exact`,
    ...cited('nist-sp-811'),
  },
  { name: 'Reference pitch, A4', value: `${STANDARD_A4}\u00a0Hz`, ...cited('iso-16') },
  ...BANDS.map((thou) => ({
    name: `Permitted variation of wire, ${thou}\u00a0thousandths`,
    value: `up to ${Number(((wireTolerance(fromThousandths(thou)) ?? NaN) / fromThousandths(1)).toFixed(2))}\u00a0thousandths either way`,
    ...wireToleranceSource,
  })),
  {
    name: 'Minimum strength of music wire',
    value: 'by diameter, sheet 4',
    ...cited(strengthSource),
  },
  {
    name: 'Share of it at which the caution starts',
    value: percent(CAUTION_SHARE),
    ...cited('shigley'),
  },
  {
    name: 'Expansion of steel with warmth',
    value: `${withTolerance(steelExpansion, 1e-6, 1)}\u00a0millionths for each degree Celsius`,
    source: steelExpansion.source,
    status: steelExpansion.status,
  },
  ...(['pull', 'travel'] as const).flatMap((sensation) =>
    (['low', 'high'] as const).map((line) => ({
      name: `Felt band for ${sensation === 'pull' ? 'pull and push' : 'travel'}, ${line === 'low' ? 'inner' : 'outer'} line`,
      value: percent(feltThresholds[sensation][line].value),
      source: feltThresholds[sensation][line].source,
      status: feltThresholds[sensation][line].status,
    })),
  ),
  ...(['friction', 'air', 'bending'] as const).map((loss) => ({
    name: `Loss factor of nylon, ${loss}`,
    value: `${withTolerance(nylonLosses[loss], 1, { friction: 4, air: 1, bending: 3 }[loss])}${loss === 'air' ? '\u00a0/s' : ''}`,
    source: nylonLosses[loss].source,
    status: nylonLosses[loss].status,
  })),
];
