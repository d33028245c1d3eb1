/** The bridge's sheet, 360 units wide: a section along the strings, and below it the springs from the back. */
import type { Measured } from '../../../instrument/bench-bridge.ts';

export const frame = {
  width: 360,
  height: 388,
  /** The knife edge */
  edge: { x: 214, y: 78 },
  /** The body's face, and the back of the cavity */
  face: 86,
  back: 222,
  wall: 40,
  end: 322,
  /** The block's sides, and the saddle */
  block: { left: 226, right: 252 },
  saddle: 232,
  /** The claw where it was set, and the height of its handle */
  claw: 92,
  handle: 248,
  /** The springs seen from the back */
  lanes: { top: 288, apart: 16 },
  /** Longest arrow of a pull */
  longest: 176,
} as const;

/** Units of drawing for a metre, in both arms and in the claw's travel. */
export const perMetre = 2300;

export const stringAt = ({ stringArm }: Measured): number => frame.edge.y - stringArm * perMetre;
export const springAt = ({ springArm }: Measured): number => frame.edge.y + springArm * perMetre;

/** Degrees to which the drawing tips for an excess of moment: in proportion, larger than life, and held on the sheet. */
export function tiltOf(excess: number): number {
  const most = 9;
  return Math.max(-most, Math.min(most, 45 * excess));
}

/** A point of the bridge after it has tipped towards the neck by `degrees`. */
export function tipped(x: number, y: number, degrees: number): readonly [number, number] {
  const angle = (-degrees * Math.PI) / 180;
  const [dx, dy] = [x - frame.edge.x, y - frame.edge.y];
  return [
    frame.edge.x + dx * Math.cos(angle) - dy * Math.sin(angle),
    frame.edge.y + dx * Math.sin(angle) + dy * Math.cos(angle),
  ];
}

/** Which of five hooks a number of springs hangs on, from the middle outwards. */
const hooks: Readonly<Record<number, readonly number[]>> = {
  1: [2],
  2: [1, 3],
  3: [0, 2, 4],
  4: [0, 1, 3, 4],
  5: [0, 1, 2, 3, 4],
};
export const lanesOf = (count: number): readonly number[] =>
  (hooks[count] ?? []).map((hook) => frame.lanes.top + 12 + hook * frame.lanes.apart);

/** A spring from 0 to 1, to be drawn out to its length: hook, coils, hook. */
export const coils = ((): string => {
  const turns = 14;
  const from = 0.12;
  const step = (0.88 - from) / turns;
  const zigzag = Array.from({ length: turns }, (_, i) => {
    const x = from + i * step;
    return `L${(x + step / 4).toFixed(3)} -4 L${(x + (3 * step) / 4).toFixed(3)} 4`;
  });
  return `M0 0 L${from} 0 ${zigzag.join(' ')} L0.88 0 L1 0`;
})();
