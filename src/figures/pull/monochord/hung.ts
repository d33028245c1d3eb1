/** Where each string hangs on the monochord's sheet, and how tall the weight is that it carries. */
import { once } from '../../../instrument/once.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import type { State } from '../../../instrument/schema.ts';
import { acrossAt } from '../../kit/strings.ts';
import { frame, shownRatio } from '../../kit/scale-length/frame.ts';

/** How tall the heaviest weight is while the instrument is as it is. */
const TYPICAL = 68;

/** Where the weights begin. */
export const top = frame.weights + 14;

/** Place across of a string, counted from 0 at the highest, and how wide its weight may be. */
export function spotOf(index: number, count: number) {
  const last = Math.max(1, count - 1);
  const x = acrossAt(count > 1 ? index / last : 0.5, frame.high, frame.low);
  const room = (frame.high - frame.low) / last;
  return { x, width: Math.min(34, room - 5), crowded: room < 30 };
}

/** A weight's height: `heaviest` is the largest pull of the instrument as it is, both in N. */
export const tall = (newtons: number, heaviest: number): number =>
  Math.min(frame.tallest, (TYPICAL * newtons) / heaviest);

/** What the strings pull with the saddle where it stands. */
export const pullsIn = once((state: State) => pullsOf(state.mine, shownRatio(state)));
