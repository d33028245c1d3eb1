/**
 * What a string is made of, and what follows from it: linear density, core area, axial and bending stiffness.
 *
 * One wrap model throughout: a round wrap wire wound close on the circle through the core's corners. A hexagon of
 * s across flats has the area (sqrt(3)/2) s² and corners 2s/sqrt(3) apart. A close-wound wire of diameter w on a
 * diameter c makes 1/w turns a metre, each a helix of length sqrt((pi (c + w))² + w²). Source: plane geometry and the helix.
 */
import { diameterRange, inPositive, inRange, linearDensityRange } from './guard.ts';
import { material, youngsModulus, type MaterialId } from './materials.ts';
import { modulusUnder } from './under-pull.ts';

export interface PlainString {
  readonly kind: 'plain';
  /** m */
  readonly diameter: number;
  readonly material: MaterialId;
}

export interface Core {
  readonly shape: 'round' | 'hex';
  /** m; a hexagon's is across flats */
  readonly diameter: number;
  readonly material: MaterialId;
}

export interface Wrap {
  /** Wire diameter, m; may be left out for the last wrap, where it follows from the diameter over it. */
  readonly diameter?: number | undefined;
  readonly material: MaterialId;
}

export interface WoundString {
  readonly kind: 'wound';
  /** Over the last wrap, m */
  readonly diameter: number;
  readonly core: Core;
  /** From the core outwards */
  readonly wraps: readonly Wrap[];
}

export interface MeasuredString {
  readonly kind: 'measured';
  /** m */
  readonly diameter: number;
  /** kg/m, as weighed */
  readonly linearDensity: number;
  /** kg/m, its standard uncertainty, where something is known of it */
  readonly linearDensityDoubt?: number | undefined;
  /** N */
  readonly axialStiffness?: number | undefined;
  /** N m² */
  readonly bendingStiffness?: number | undefined;
}

export type Construction = PlainString | WoundString | MeasuredString;

/** How the first wrap lies on a hex core: on the circle through its corners, or hugging its flats. */
export type WrapSeat = 'corners' | 'flats';

const HEX_CORNERS = 2 / Math.sqrt(3);
const HEX_AREA = Math.sqrt(3) / 2;
const HEX_PERIMETER = 2 * Math.sqrt(3);

const circleArea = (diameter: number): number => (Math.PI / 4) * diameter * diameter;

/** Diameter in m of the circle that the first wrap sits on. */
export function seatDiameter(core: Core): number {
  inRange('core.diameter', core.diameter, diameterRange);
  return core.shape === 'hex' ? HEX_CORNERS * core.diameter : core.diameter;
}

/** Cross-section of a wire or of a core in m². */
export function coreArea(c: PlainString | WoundString): number {
  if (c.kind === 'plain') {
    inPositive('diameter', c.diameter, diameterRange);
    return circleArea(c.diameter);
  }
  inPositive('core.diameter', c.core.diameter, diameterRange);
  return c.core.shape === 'hex' ? HEX_AREA * c.core.diameter ** 2 : circleArea(c.core.diameter);
}

export interface Layer {
  /** Wire diameter, m */
  readonly wire: number;
  /** Diameter that the wire sits on, m */
  readonly inner: number;
  readonly material: MaterialId;
}

/**
 * The wraps with every wire diameter worked out, from the core outwards.
 * Throws RangeError when a wire's diameter is missing before the last wrap, or the layers don't fit into `diameter`.
 */
export function layers(c: WoundString): readonly Layer[] {
  inPositive('diameter', c.diameter, diameterRange);
  if (c.wraps.length === 0) throw new RangeError('wraps is empty; permitted: at least one wrap');
  let inner = seatDiameter(c.core);
  return c.wraps.map((wrap, index) => {
    const last = index === c.wraps.length - 1;
    const wire = wrap.diameter ?? (last ? (c.diameter - inner) / 2 : undefined);
    if (wire === undefined) {
      throw new RangeError(
        `wraps[${index}].diameter is missing; permitted: only the last wrap's may be left out`,
      );
    }
    inRange(`wraps[${index}].diameter`, wire, diameterRange);
    const layer = { wire, inner, material: wrap.material };
    inner += 2 * wire;
    if (last && Math.abs(inner - c.diameter) > 1e-3 * c.diameter) {
      throw new RangeError(
        `diameter is ${c.diameter}; permitted: what core and wraps add up to, ${inner} m`,
      );
    }
    return layer;
  });
}

/** Length of a close-wound wire for each length of string, by the helix. Dimensionless. */
export function wrapLengthRatio({ inner, wire }: { inner: number; wire: number }): number {
  inRange('inner', inner, diameterRange);
  inRange('wire', wire, diameterRange);
  return Math.hypot(Math.PI * (inner + wire), wire) / wire;
}

/** As `wrapLengthRatio`, for a first wrap that hugs a hexagon of `flats` across: the path is its rounded outline. */
function huggingLengthRatio({ flats, wire }: { flats: number; wire: number }): number {
  return Math.hypot(HEX_PERIMETER * flats + Math.PI * wire, wire) / wire;
}

/** Linear density in kg/m. `seat` is the wrap model; the site uses the corners everywhere, the flats only as its lower bound. */
export function linearDensity(c: Construction, seat: WrapSeat = 'corners'): number {
  if (c.kind === 'measured') return inRange('linearDensity', c.linearDensity, linearDensityRange);
  if (c.kind === 'plain') return material(c.material).density.value * coreArea(c);
  let sum = material(c.core.material).density.value * coreArea(c);
  layers(c).forEach(({ wire, inner, material: id }, index) => {
    const hugs = seat === 'flats' && index === 0 && c.core.shape === 'hex';
    const ratio = hugs
      ? huggingLengthRatio({ flats: c.core.diameter, wire })
      : wrapLengthRatio({ inner, wire });
    sum += material(id).density.value * circleArea(wire) * ratio;
  });
  return sum;
}

/** The wire of a plain string, or a wound one's core: what is pulled. */
export const wireOf = (c: PlainString | WoundString) => (c.kind === 'plain' ? c : c.core);

/**
 * Axial stiffness E A in N: of the wire, or of a wound string's core, since a close wrap gives like a spring. A polymer's grows with
 * what it bears: give the pull in N for how it resists a little more stretch; without it, how it gives on its way up from slack.
 * Throws RangeError for a measured string that does not name it. Source: Hooke's law; `modulusUnder`.
 */
export function axialStiffness(c: Construction, pull?: number): number {
  if (c.kind === 'measured') {
    if (c.axialStiffness === undefined)
      throw new RangeError('axialStiffness is missing; permitted: a measured string that names it');
    return inRange('axialStiffness', c.axialStiffness, { min: 0, open: true, unit: 'N' });
  }
  const area = coreArea(c);
  const grown =
    pull === undefined
      ? undefined
      : modulusUnder({ material: wireOf(c).material, stress: pull / area, asked: 'stretched' });
  return (grown ?? youngsModulus(wireOf(c))) * area;
}

/** Of a round wire about a diameter, m⁴. Source: pi d⁴/64. */
export const circleSecondMoment = (diameter: number): number => (Math.PI / 64) * diameter ** 4;
/** Of a hexagon about any axis through its middle, for each fourth power of its flats. */
const HEX_SECOND_MOMENT = (5 * Math.sqrt(3)) / 144;

/**
 * Bending stiffness E I in N m² of a string that vibrates: of the wire, or of a wound string's core alone; `bendingStiffnessBounds`
 * says what its wraps may add. A polymer's grows with the pull in N; without it, the string lies slack. Source: the second moment of
 * a circle, pi d⁴/64, and of a regular hexagon, 5 sqrt(3) s⁴/144; `modulusUnder`.
 */
export function bendingStiffness(c: Construction, pull = 0): number {
  if (c.kind === 'measured') {
    if (c.bendingStiffness === undefined)
      throw new RangeError(
        'bendingStiffness is missing; permitted: a measured string that names it',
      );
    return inRange('bendingStiffness', c.bendingStiffness, { min: 0, unit: 'N m²' });
  }
  const wire = wireOf(c);
  const stress = pull / coreArea(c);
  const hex = c.kind === 'wound' && c.core.shape === 'hex';
  const moment = hex ? HEX_SECOND_MOMENT * wire.diameter ** 4 : circleSecondMoment(wire.diameter);
  const grown = modulusUnder({ material: wire.material, stress, asked: 'vibrating' });
  return (grown ?? youngsModulus(wire)) * moment;
}
