/** Two sheets: the neck with a flag at each fret, and the saddles enlarged. */
import { FARTHEST_SETBACK, fretPosition } from '../../../physics/index.ts';
import { pitchJustNoticed } from './ear.ts';

interface Plan {
  readonly name: 'narrow-sheet' | 'wide-sheet';
  readonly width: number;
  readonly height: number;
  /** The nut, and where the drawing of the neck ends */
  readonly nut: number;
  readonly end: number;
  /** The line of being in tune, and how far flags may reach either way */
  readonly middle: number;
  readonly reach: number;
  readonly size: number;
}

export const phone: Plan = {
  name: 'narrow-sheet',
  width: 360,
  height: 246,
  nut: 34,
  end: 356,
  middle: 112,
  reach: 92,
  size: 12,
};
export const wide: Plan = {
  name: 'wide-sheet',
  width: 640,
  height: 330,
  nut: 44,
  end: 634,
  middle: 150,
  reach: 124,
  size: 14,
};
export type { Plan };

/** Frets that carry a flag. */
export const FRETS = 15;
/** Frets whose flags are lettered with their cents. */
export const numbered: readonly number[] = [1, 3, 5, 7, 9, 12, 15];

/** Along, of a fret: the same for every scale, since frets stand at shares of it. */
export function fretX({ nut, end }: Plan, fret: number): number {
  const at = (n: number): number => fretPosition({ scaleLength: 1, fret: n });
  return nut + ((end - nut - 14) * at(fret)) / at(FRETS);
}

/** Units of drawing for a cent, so that the largest of these errors reaches just to the end. */
export function perCent({ reach }: Plan, errors: readonly number[]): number {
  const most = Math.max(1.3 * pitchJustNoticed, ...errors.map(Math.abs));
  return reach / most;
}

/** All flags as one path: a pole from the line of being in tune, and a pennant at its end; an arrowhead where that lies beyond the board. */
export function flagsPath(plan: Plan, errors: readonly number[], scale: number): string {
  const room = plan.reach + 10;
  return errors
    .map((cents, i) => {
      const x = fretX(plan, i + 1).toFixed(1);
      const long = -cents * scale;
      if (Math.abs(long) > room) {
        const way = Math.sign(long);
        return `M${x} ${plan.middle} v${way * (room - 9)} m-4 0 h8 l-4 ${way * 9} z`;
      }
      // A flag lower than its own pennant would be drawn inside out.
      if (Math.abs(long) < 3) return `M${x} ${plan.middle} v${long.toFixed(1)}`;
      const tall = Math.min(8, Math.abs(long)) * Math.sign(-long);
      return `M${x} ${plan.middle} v${long.toFixed(1)} l8 ${(tall / 2).toFixed(1)} l-8 ${(tall / 2).toFixed(1)}`;
    })
    .join(' ');
}

export const saddles = {
  width: 360,
  left: 40,
  // Short of the sheet's end, so that the handle keeps clear of the edge of a phone.
  right: 326,
  top: 38,
  row: 24,
  closeRow: 16,
} as const;

/** How close the rows stand: twelve strings have to fit too. */
export const rowOf = (count: number): number => (count > 8 ? saddles.closeRow : saddles.row);
export const saddleHeight = (count: number): number => saddles.top + count * rowOf(count) + 52;

export interface SaddleScale {
  /** m */
  readonly min: number;
  readonly max: number;
  readonly perMetre: number;
}

/** From a millimetre before the scale's end to well beyond the farthest saddle. */
export function saddleScale(best: readonly number[]): SaddleScale {
  const min = -0.001;
  // A slack thick string wants its saddle farther back than the model goes.
  const max = Math.min(FARTHEST_SETBACK, Math.max(0.003, 1.6 * Math.max(0, ...best)));
  return { min, max, perMetre: (saddles.right - saddles.left) / (max - min) };
}

export const saddleX = ({ min, perMetre }: SaddleScale, setback: number): number =>
  saddles.left + (setback - min) * perMetre;
