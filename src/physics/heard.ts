/**
 * From what was heard to the string: the gauge of a plain one, the bending stiffness of any, the core of a wound one.
 * Source of the law: Fletcher 1964, B = pi² E I/(T L²), with Mersenne's T = 4 mu L² f². Of the doubts: JCGM 100:2008, equation (10).
 */
import { bendingStiffnessBounds } from './bounds.ts';
import { bendingStiffness, type Core, type PlainString, type WoundString } from './construction.ts';
import {
  diameterRange,
  frequencyRange,
  inPositive,
  inRange,
  linearDensityRange,
  speakingLengthRange,
} from './guard.ts';
import { material, youngsModulus, type MaterialId } from './materials.ts';
import { fromHalfWidth, propagate, type Estimate } from './uncertainty.ts';
import { modulusUnder, modulusUnderDoubt } from './under-pull.ts';
import { wireTolerance } from './wire-tolerance.ts';

/** Standard uncertainties of what goes in. What is not given counts as certain, but for the material's own. */
export interface HeardDoubts {
  /** Hz */
  readonly fundamental?: number;
  /** Without unit, as `listen` gives it */
  readonly inharmonicity?: number;
  /** m */
  readonly speakingLength?: number;
  /** kg/m */
  readonly linearDensity?: number;
  /** Relative; of the material's own tolerance when not given */
  readonly modulus?: number;
}

interface HeardTone {
  /** f0, Hz */
  readonly fundamental: number;
  /** B, without unit */
  readonly inharmonicity: number;
  /** m */
  readonly speakingLength: number;
  readonly doubts: HeardDoubts;
}

const inharmonicityRange = { min: 0, open: true, max: 1 } as const;
/** A gauge remains when it lies within so many standard uncertainties: 95 of a hundred right ones do. */
const WITHIN = 2;

function check({ fundamental, inharmonicity, speakingLength }: HeardTone): void {
  inPositive('fundamental', fundamental, frequencyRange);
  inRange('inharmonicity', inharmonicity, inharmonicityRange);
  inPositive('speakingLength', speakingLength, speakingLengthRange);
}

const toneInputs = ({ fundamental, inharmonicity, speakingLength, doubts }: HeardTone) => ({
  fundamental: { value: fundamental, uncertainty: doubts.fundamental ?? 0 },
  inharmonicity: { value: inharmonicity, uncertainty: doubts.inharmonicity ?? 0 },
  speakingLength: { value: speakingLength, uncertainty: doubts.speakingLength ?? 0 },
});

function modulusDoubt(id: MaterialId): number {
  const { value, tolerance } = material(id).modulus;
  return fromHalfWidth(modulusUnderDoubt(id, 'vibrating') ?? tolerance / value);
}

type GaugeInput = 'fundamental' | 'inharmonicity' | 'speakingLength' | 'density' | 'modulus';

export interface GaugeHeard {
  /** m */
  readonly diameter: number;
  /** One standard uncertainty, m */
  readonly doubt: number;
  /** What each input adds to it, m */
  readonly contributions: Readonly<Record<GaugeInput, number>>;
  /** The drawer's plain strings of this material that it may have been, the nearest first */
  readonly remaining: readonly PlainString[];
}

/** How far, in m, a wire that is sold as `diameter` may be off, as a standard uncertainty; 0 where no standard says. */
function soldAs(diameter: number, id: MaterialId): number {
  return id === 'musicWire' ? fromHalfWidth(wireTolerance(diameter) ?? 0) : 0;
}

/**
 * Diameter of a plain string from its fundamental, its inharmonicity and its length: d² = 64 rho B L⁴ f²/(pi² E), so that it goes
 * with the square of the length: from nut or fret to the saddle where it stands, which is a scale and its setback. `drawer` holds the
 * strings that it may have been. Throws RangeError naming an argument that
 * lies outside. Source: Fletcher 1964; JCGM 100:2008, equation (10).
 */
export function gaugeHeard({
  material: id,
  drawer = [],
  ...tone
}: HeardTone & {
  readonly material: MaterialId;
  readonly drawer?: readonly PlainString[];
}): GaugeHeard {
  check(tone);
  const { density, modulus } = material(id);
  const inputs: Record<GaugeInput, Estimate> = {
    ...toneInputs(tone),
    density: { value: density.value, uncertainty: density.tolerance / Math.sqrt(3) },
    modulus: { value: 1, uncertainty: tone.doubts.modulus ?? modulusDoubt(id) },
  };
  const diameterFor = (at: Record<GaugeInput, number>, young: number): number =>
    Math.sqrt((64 * at.density * at.inharmonicity) / (young * at.modulus)) *
    (at.speakingLength ** 2 * (at.fundamental / Math.PI));
  // Music wire's modulus goes by its diameter, in three bands: the band is found first and then stands.
  const values = { ...tone, density: density.value, modulus: 1 };
  // A polymer's goes by its stress, density times the square of twice length times pitch, which needs no diameter.
  const stress = density.value * (2 * tone.speakingLength * tone.fundamental) ** 2;
  const grown = modulusUnder({ material: id, stress, asked: 'vibrating' });
  let young = grown ?? modulus.value;
  for (let i = 0; i < 3 && grown === undefined; i += 1)
    young = youngsModulus({
      material: id,
      diameter: Math.min(diameterFor(values, young), diameterRange.max),
    });
  const { value, uncertainty, contributions } = propagate((at) => diameterFor(at, young), inputs);
  const off = ({ diameter }: PlainString): number => Math.abs(diameter - value);
  const remaining = drawer
    .filter(
      (s) =>
        s.material === id && off(s) <= WITHIN * Math.hypot(uncertainty, soldAs(s.diameter, id)),
    )
    .sort((a, b) => off(a) - off(b));
  return { diameter: value, doubt: uncertainty, contributions, remaining };
}

/**
 * Bending stiffness E I in N m² of any string, from its fundamental, its inharmonicity, its length and its weight (kg/m):
 * E I = 4 mu B L⁴ f²/pi². Throws RangeError naming an argument that lies outside. Source: Fletcher 1964; JCGM 100:2008,
 * equation (10).
 */
export function bendingStiffnessHeard({
  linearDensity,
  ...tone
}: HeardTone & { readonly linearDensity: number }): Estimate {
  check(tone);
  inPositive('linearDensity', linearDensity, linearDensityRange);
  const weight = { value: linearDensity, uncertainty: tone.doubts.linearDensity ?? 0 };
  const { value, uncertainty } = propagate(
    (at) =>
      (4 * at.linearDensity * at.inharmonicity * at.speakingLength ** 4 * at.fundamental ** 2) /
      Math.PI ** 2,
    { ...toneInputs(tone), linearDensity: weight },
  );
  return { value, uncertainty };
}

/** The diameter of a core that has `stiffness` N m² by itself. */
function coreOf(stiffness: number, { shape, material: id }: Omit<Core, 'diameter'>): number {
  const unit = (diameter: number) =>
    bendingStiffness({
      kind: 'wound',
      diameter,
      core: { shape, diameter, material: id },
      wraps: [],
    }) /
    diameter ** 4;
  let diameter = (stiffness / unit(4e-4)) ** 0.25;
  // Again with the modulus of its own band.
  diameter = (stiffness / unit(Math.min(diameter, diameterRange.max))) ** 0.25;
  return diameter;
}

/**
 * The range of cores, in m, that a wound string of `diameter` m over a single wrap may have, from the bending stiffness heard: the
 * thickest if its wrap adds nothing, the thinnest if the wrap adds all that a spring can. Each with its standard uncertainty.
 * Throws RangeError naming an argument that lies outside. Source: `bendingStiffnessBounds`; JCGM 100:2008, equation (10).
 */
export function coreHeard({
  bendingStiffness: heard,
  diameter,
  core,
  wrap,
}: {
  readonly bendingStiffness: Estimate;
  readonly diameter: number;
  readonly core: Omit<Core, 'diameter'>;
  readonly wrap: MaterialId;
}): { readonly thinnest: Estimate; readonly thickest: Estimate } {
  inRange('bendingStiffness', heard.value, { min: 0, open: true, max: 1e3, unit: 'N m²' });
  inPositive('diameter', diameter, diameterRange);
  const own = modulusDoubt(core.material);
  const withCore = (flats: number): WoundString => ({
    kind: 'wound',
    diameter,
    core: { ...core, diameter: flats },
    wraps: [{ material: wrap }],
  });
  /** E I of core and wrap together */
  const most = (flats: number): number => {
    const string = withCore(flats);
    const { low, high } = bendingStiffnessBounds(string);
    return bendingStiffness(string) * (1 + high + low);
  };
  const thinnestFor = (stiffness: number): number => {
    let low = 0.05 * diameter;
    let high = Math.min(coreOf(stiffness, core), 0.84 * diameter);
    for (let i = 0; i < 50; i += 1) {
      const middle = (low + high) / 2;
      if (most(middle) < stiffness) low = middle;
      else high = middle;
    }
    return high;
  };
  const range = (f: (stiffness: number) => number): Estimate => {
    const { value, uncertainty } = propagate(({ stiffness, modulus }) => f(stiffness / modulus), {
      stiffness: heard,
      modulus: { value: 1, uncertainty: own },
    });
    return { value, uncertainty };
  };
  return { thinnest: range(thinnestFor), thickest: range((s) => coreOf(s, core)) };
}
