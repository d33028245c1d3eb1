/**
 * Conversions at the edges of the module, which is SI inside.
 * Source: NIST SP 811 (2008), appendix B: inch, pound and standard gravity are exact by definition.
 */

/** Metres in an inch, exact. */
export const INCH = 0.0254;
/** Kilograms in an avoirdupois pound, exact. */
export const POUND = 0.45359237;
/** Standard acceleration of free fall, m/s², exact. */
export const STANDARD_GRAVITY = 9.80665;
/** Newtons in a pound-force, exact: one pound at standard gravity. */
export const POUND_FORCE = POUND * STANDARD_GRAVITY;
/** Newtons in a kilogram-force, exact: what a hung kilogram pulls. */
const KILOGRAM_FORCE = STANDARD_GRAVITY;
/** Kilograms a metre in a pound an inch. */
export const POUND_PER_INCH = POUND / INCH;
/** Metres in a thousandth of an inch, the trade's unit of gauge. */
export const THOUSANDTH = INCH / 1000;

export const inches = (metres: number): number => metres / INCH;
export const fromInches = (value: number): number => value * INCH;
export const millimetres = (metres: number): number => metres * 1000;
export const fromMillimetres = (value: number): number => value / 1000;
export const thousandths = (metres: number): number => metres / THOUSANDTH;
export const fromThousandths = (value: number): number => value * THOUSANDTH;
export const poundsForce = (newtons: number): number => newtons / POUND_FORCE;
export const fromPoundsForce = (value: number): number => value * POUND_FORCE;
export const kilogramsForce = (newtons: number): number => newtons / KILOGRAM_FORCE;
export const fromKilogramsForce = (value: number): number => value * KILOGRAM_FORCE;
export const poundsPerInch = (kgPerMetre: number): number => kgPerMetre / POUND_PER_INCH;
export const fromPoundsPerInch = (value: number): number => value * POUND_PER_INCH;
export const gramsPerMetre = (kgPerMetre: number): number => kgPerMetre * 1000;
export const fromGramsPerMetre = (value: number): number => value / 1000;
