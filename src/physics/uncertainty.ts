/**
 * How sure a number is, when what went into it isn't: JCGM 100:2008 (the GUM), equation (10), for inputs that don't depend on
 * each other. A quantity's standard uncertainty is the root of the sum of squares of sensitivity times standard uncertainty.
 */
import { reachable, type Ends } from './bend.ts';
import { bendingStiffnessBounds, linearDensityBounds } from './bounds.ts';
import {
  axialStiffness,
  bendingStiffness,
  linearDensity,
  wireOf,
  type Construction,
  type MeasuredString,
} from './construction.ts';
import { stoppedLength } from './frets.ts';
import { inRange } from './guard.ts';
import { material } from './materials.ts';
import { inharmonicity } from './stiffness.ts';
import { strengthShare } from './strength.ts';
import { tension as tensionOf } from './tension.ts';
import { strainAtPitch, thins } from './tuned.ts';
import { modulusUnderDoubt, type Quickness } from './under-pull.ts';

export interface Estimate {
  readonly value: number;
  /** Standard uncertainty, in the unit of `value` */
  readonly uncertainty: number;
}

/** Standard uncertainty of a value known to lie within `halfWidth` either way, all places alike: JCGM 100:2008, 4.3.7. */
export function fromHalfWidth(halfWidth: number): number {
  return inRange('halfWidth', halfWidth, { min: 0 }) / Math.sqrt(3);
}

/**
 * A function's value and its standard uncertainty, with what each input contributes, in the unit of the value.
 * Sensitivities are central differences over a standard uncertainty each way, as JCGM 100:2008 5.1.3 note 2 allows.
 * Throws RangeError naming an input that is not finite or an uncertainty that is negative. Source: JCGM 100:2008, equation (10).
 */
export function propagate<Name extends string>(
  f: (inputs: Record<Name, number>) => number,
  inputs: Readonly<Record<Name, Estimate>>,
): Estimate & { readonly contributions: Readonly<Record<Name, number>> } {
  const names = Object.keys(inputs) as Name[];
  const values = {} as Record<Name, number>;
  for (const name of names) {
    values[name] = inRange(name, inputs[name].value, {});
    inRange(`${name}.uncertainty`, inputs[name].uncertainty, { min: 0 });
  }
  const contributions = {} as Record<Name, number>;
  let squares = 0;
  for (const name of names) {
    const { value, uncertainty } = inputs[name];
    const at = (shift: number) => f({ ...values, [name]: value + shift * uncertainty });
    contributions[name] = uncertainty === 0 ? 0 : Math.abs(at(1) - at(-1)) / 2;
    squares += contributions[name] ** 2;
  }
  return { value: f(values), uncertainty: Math.sqrt(squares), contributions };
}

/** What is uncertain in a string, as standard uncertainties; what is not given counts as certain, but for the materials' own. */
export interface Doubts {
  /** m, of the wire, or of a wound string's diameter over its last wrap */
  readonly diameter?: number;
  /** m, of a wound string's core */
  readonly coreDiameter?: number;
  /** m */
  readonly speakingLength?: number;
  /** cents */
  readonly pitch?: number;
  /** Relative, of a measured string's unit weight */
  readonly linearDensity?: number;
}

export interface StringAsked {
  readonly construction: Construction;
  /** m */
  readonly speakingLength: number;
  /** Hz */
  readonly frequency: number;
  /** For push and travel: where the string is bent, and by how many cents */
  readonly bend?:
    { readonly fret: number; readonly rise: number; readonly ends?: Ends | undefined } | undefined;
  readonly doubts: Doubts;
}

type Input = keyof Doubts | 'density' | 'modulus';

export type StringQuantity =
  'linearDensity' | 'pull' | 'push' | 'travel' | 'share' | 'inharmonicity';

type Estimated = ReturnType<typeof propagate<Input>>;

/** The string with its measures moved. A last wrap of given wire gives way, so that the diameter over it can move. */
function moved(c: Construction, diameter: number, core: number): Construction {
  if (c.kind !== 'wound') return { ...c, diameter: c.diameter + diameter };
  const last = c.wraps.length - 1;
  return {
    ...c,
    diameter: c.diameter + diameter,
    core: { ...c.core, diameter: c.core.diameter + core },
    wraps: c.wraps.map((wrap, i) => (i === last ? { material: wrap.material } : wrap)),
  };
}

/** A moved string as if weighed and stretched on a bench, with its density and its moduli off by the given factors. */
function bench(
  c: Construction,
  { density, stretched, vibrating }: Record<'density' | Quickness, number>,
  pull: number,
): MeasuredString {
  const stiff = c.kind !== 'measured';
  return {
    kind: 'measured',
    diameter: c.diameter,
    linearDensity: linearDensity(c) * density,
    axialStiffness:
      stiff || c.axialStiffness !== undefined ? axialStiffness(c, pull) * stretched : undefined,
    bendingStiffness:
      stiff || c.bendingStiffness !== undefined ? bendingStiffness(c, pull) * vibrating : undefined,
  };
}

/** Relative standard uncertainties: of the density, of what a slack string is stretched with, and of what it resists with once it pulls. */
function materialDoubts(c: Construction): Record<'density' | 'modulus' | Quickness, number> {
  if (c.kind === 'measured') return { density: 0, modulus: 0, stretched: 0, vibrating: 0 };
  const bounds = linearDensityBounds(c);
  const id = wireOf(c).material;
  const { modulus } = material(id);
  const slack = modulus.tolerance / modulus.value;
  return {
    density: fromHalfWidth((bounds.high - bounds.low) / 2),
    modulus: fromHalfWidth(slack),
    stretched: fromHalfWidth(modulusUnderDoubt(id, 'stretched') ?? slack),
    vibrating: fromHalfWidth(modulusUnderDoubt(id, 'vibrating') ?? slack),
  };
}

/** Half of what a wound string's wraps may add to its bending stiffness, relative, as a standard uncertainty. */
function wrapDoubt(c: Construction): number {
  const { low, high } = bendingStiffnessBounds(c);
  return fromHalfWidth((high + low) / 2);
}

/**
 * Linear density (kg/m), pull (N), push (N) and travel (m) of a bend, share of the minimum strength and inharmonicity coefficient of
 * a string, each with its standard uncertainty and what causes it. Density and modulus are doubted by their materials' tolerance,
 * everything else by `doubts`. A quantity that can't be known is left undefined; the minimum strength itself is taken as it stands.
 * Throws RangeError naming an argument that lies outside. Source: JCGM 100:2008, equation (10), on the functions of this module.
 */
export function estimateString({
  construction: c,
  speakingLength,
  frequency,
  bend,
  doubts,
}: StringAsked): Readonly<Record<StringQuantity, Estimated | undefined>> {
  const own = materialDoubts(c);
  const inputs: Record<Input, Estimate> = {
    diameter: { value: 0, uncertainty: doubts.diameter ?? 0 },
    coreDiameter: { value: 0, uncertainty: doubts.coreDiameter ?? 0 },
    speakingLength: { value: speakingLength, uncertainty: doubts.speakingLength ?? 0 },
    pitch: { value: 0, uncertainty: doubts.pitch ?? 0 },
    linearDensity: { value: 1, uncertainty: doubts.linearDensity ?? 0 },
    density: { value: 1, uncertainty: own.density },
    // In standard uncertainties: a polymer's three moduli, each doubted by its own, go up and down together.
    modulus: { value: 0, uncertainty: 1 },
  };
  const state = (at: Record<Input, number>) => {
    const real = moved(c, at.diameter, at.coreDiameter);
    const factor = (of: 'modulus' | Quickness) => 1 + at.modulus * own[of];
    const density = at.density * at.linearDensity;
    const slackPull = tensionOf({
      speakingLength: at.speakingLength,
      frequency: frequency * 2 ** (at.pitch / 1200),
      linearDensity: linearDensity(real) * density,
    });
    const tension = !thins(c)
      ? slackPull
      : slackPull /
        (1 + strainAtPitch({ slackPull, stiffness: axialStiffness(real) * factor('modulus') }));
    const [stretched, vibrating] = [factor('stretched'), factor('vibrating')];
    const string = bench(real, { density, stretched, vibrating }, tension);
    return { real, string, tension, speakingLength: at.speakingLength };
  };
  const bent = (at: Record<Input, number>) => {
    if (!bend) return undefined;
    const { string, tension, speakingLength: length } = state(at);
    const finger = stoppedLength({ scaleLength: length, fret: bend.fret });
    const how = { rise: bend.rise, ends: bend.ends };
    return reachable({
      construction: string,
      speakingLength: length,
      tension,
      at: finger,
      ...how,
    });
  };
  const stiffnessOf = (at: Record<Input, number>) => {
    const { string, ...stretched } = state(at);
    const { bendingStiffness } = string;
    return bendingStiffness === undefined
      ? undefined
      : inharmonicity({ ...stretched, bendingStiffness });
  };
  const shareOf = (at: Record<Input, number>) => {
    const { real, tension } = state(at);
    return strengthShare({ construction: real, tension });
  };
  const known = (f: (at: Record<Input, number>) => number | undefined): Estimated | undefined => {
    const nominal = Object.fromEntries(Object.entries(inputs).map(([k, v]) => [k, v.value]));
    if (f(nominal as Record<Input, number>) === undefined) return undefined;
    const found = propagate((at) => f(at) ?? NaN, inputs);
    // A core at the end of the strength table, say, may be thicker than the table goes.
    return Number.isFinite(found.uncertainty) ? found : undefined;
  };
  const stiff = known(stiffnessOf);
  return {
    linearDensity: known((at) => state(at).string.linearDensity),
    pull: known((at) => state(at).tension),
    push: known((at) => bent(at)?.push),
    travel: known((at) => bent(at)?.travel),
    share: known(shareOf),
    inharmonicity: stiff && {
      ...stiff,
      uncertainty: Math.hypot(stiff.uncertainty, stiff.value * wrapDoubt(c)),
    },
  };
}
