/** Where things stand on the sheet of the recorded string, in the drawing's units. */
import { RUNGS } from './recorded.ts';

export const WIDTH = 360;
export const HEIGHT = 590;
/** Of the comb's spine and of its teeth's tips, where zero cents is */
export const SPINE = 26;
export const TIP = 62;
const RIGHT = 340;
const FOOT = 440;
const STEP = 14.4;
/** Cents that the sheet holds: what the thickest wire would show at the twelfth fret, at the last rung */
export const MOST = 75;
/** The wire's section, its left jaw, its middle, and how large a thousandth is drawn */
export const SECTION = { left: 30, y: 520, perThousandth: 5.2, foot: 566 };

/** Down, of partial `n`. */
export const down = (n: number): number => FOOT - n * STEP;
export const TOP = down(RUNGS) - 14;
export const GROUND = FOOT;

/** Across, of so many cents above even. */
export const across = (cents: number): number => TIP + (cents / MOST) * (RIGHT - TIP);
