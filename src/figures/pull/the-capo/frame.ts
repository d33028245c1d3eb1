/** The capo's sheet, 360 units wide: a neck from its side, its heights drawn several times too high, and the weight at its end. */
import { fretPosition, millimetres } from '../../../physics/index.ts';
import { actionOf, MOST_FRETS, padBehind } from './capo.ts';
import type { Pull } from '../../../instrument/pulls.ts';

export const frame = {
  width: 360,
  height: 262,
  nut: 30,
  saddle: 258,
  /** Height of the frets' tops, of the wood below them and of its lower side */
  frets: 70,
  wood: 75,
  under: 97,
  pulley: { x: 284, radius: 12 },
  weight: { x: 296, width: 50, top: 102, own: 38 },
  dimension: 126,
  first: 176,
  row: 22,
} as const;

/** Units of drawing for a millimetre of height. */
const HIGH = 4.2;

export const alongAt = (metres: number, scale: number): number =>
  frame.nut + (metres / scale) * (frame.saddle - frame.nut);

/** How many times higher heights are drawn than lengths, on a scale of so many m. */
export const timesTooHigh = (scale: number): number =>
  (HIGH * millimetres(scale)) / (frame.saddle - frame.nut);

export const fretsOf = (scale: number): readonly number[] =>
  Array.from({ length: 20 }, (_, i) =>
    alongAt(fretPosition({ scaleLength: scale, fret: i + 1 }), scale),
  );

/** The stops of the capo, m from the nut: none, and the frets. */
export const stopsOf = (scale: number): readonly number[] =>
  Array.from({ length: MOST_FRETS + 1 }, (_, fret) => fretPosition({ scaleLength: scale, fret }));

export interface Course {
  /** Where the pad stands */
  readonly pad: number;
  /** The string from behind the nut to the pulley */
  readonly path: string;
  /** Height of the saddle's top */
  readonly top: number;
}

/** The string's course with a capo behind `fret`, or open at 0. */
export function courseOf(pull: Pull, fret: number, fretless = false): Course {
  const { speakingLength: scale } = pull;
  const { nutHeight, saddleHeight } = actionOf(pull);
  const nut = frame.frets - millimetres(nutHeight) * HIGH;
  const top = frame.frets - millimetres(saddleHeight) * HIGH;
  const at = fret === 0 ? 0 : fretPosition({ scaleLength: scale, fret });
  const x = alongAt(at, scale);
  const pad = fret === 0 ? frame.nut : alongAt(at - padBehind(scale, fret, fretless), scale);
  const pressed =
    fret === 0 ? '' : `L${pad.toFixed(2)} ${frame.frets + 1}L${x.toFixed(2)} ${frame.frets}`;
  const { pulley } = frame;
  const over = `L${frame.saddle} ${top}L${pulley.x} ${top}A${pulley.radius} ${pulley.radius} 0 0 1 ${pulley.x + pulley.radius} ${top + pulley.radius}V${frame.weight.top - 10}`;
  return { pad, path: `M12 ${nut + 7}L${frame.nut} ${nut}${pressed}${over}`, top };
}
