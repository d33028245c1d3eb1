/** Where each string hangs on the monochord's sheet, and how tall the weight is that it carries. */
import { acrossOf, coursesOf, type Placed } from '../../../instrument/courses.ts';
import { once } from '../../../instrument/once.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import type { State } from '../../../instrument/schema.ts';
import { acrossAt } from '../../kit/strings.ts';
import { frame, shownRatio } from '../../kit/scale-length/frame.ts';

/** How tall the heaviest weight is while the instrument is as it is. */
const TYPICAL = 68;

/** Where the weights begin. */
export const top = frame.weights + 14;

export interface Spot {
  /** Across, of the string; and how wide its weight may be */
  readonly x: number;
  readonly width: number;
  /** The strings of its course, by their index: what is lettered once for all of them stands at the first of them, in their middle */
  readonly course: readonly number[];
  readonly middle: number;
  readonly crowded: boolean;
}

/** Place across of each string, those of a course close together. */
export const spotsOf = once((strings: readonly Placed[]): readonly Spot[] => {
  const xs = acrossOf(strings).map((across) => acrossAt(across, frame.high, frame.low));
  const middles = coursesOf(strings).map((course) => {
    const [from = 0, to = 0] = [xs[course[0] ?? 0], xs[course.at(-1) ?? 0]];
    return { course, middle: (from + to) / 2 };
  });
  return middles.flatMap(({ course, middle }, c) => {
    const room = Math.abs(
      (middles[c === 0 ? 1 : c - 1]?.middle ?? frame.low - frame.high) - middle,
    );
    const close = Math.abs((xs[course[0] ?? 0] ?? 0) - (xs[course[1] ?? -1] ?? Infinity));
    const width = Math.min(34, room - 5, close - 2);
    return course.map((i) => ({
      x: xs[i] ?? 0,
      width,
      course: i === course[0] ? course : [],
      middle,
      crowded: room < 30,
    }));
  });
});

/** A weight's height: `heaviest` is the largest pull of the instrument as it is, both in N. */
export const tall = (newtons: number, heaviest: number): number =>
  Math.min(frame.tallest, (TYPICAL * newtons) / heaviest);

/** What the strings pull with the saddle where it stands. */
export const pullsIn = once((state: State) => pullsOf(state.mine, shownRatio(state)));
