/**
 * A finger that presses harder than it must: behind the fret the string goes down further, towards the board, and is stretched more.
 * Source: plane geometry, on the path of `frettedPath`, whose finger follows the string's own slope.
 */
import { frettedPath, type Action, type StringResponse } from './intonation.ts';
import { fretPosition } from './frets.ts';
import { inRange } from './guard.ts';

/**
 * How many cents a stopped note goes up when the finger, `fingerBehind` m behind the fret, presses the string `depth` m below the
 * frets' tops. Nothing of it depends on the stiffness against bending. Throws RangeError naming an argument that lies outside, and as
 * `frettedPath` does. Source: see the head of this file.
 */
export function pressedDeep({
  fret,
  depth,
  response,
  ...action
}: Action & {
  readonly fret: number;
  readonly fingerBehind: number;
  readonly depth: number;
  readonly response: Pick<StringResponse, 'stretch'>;
}): number {
  const { scaleLength, nutHeight, saddleHeight, fingerBehind } = action;
  const { saddleSetback = 0, nutSetback = 0 } = action;
  const { open, sounding, strain } = frettedPath({ fret, ...action });
  const behind = fretPosition({ scaleLength, fret }) + nutSetback;
  const slope = saddleHeight / (scaleLength + nutSetback + saddleSetback - behind);
  // Less deep than the string's own slope would be a finger that doesn't touch.
  inRange('depth', depth, { min: slope * fingerBehind, max: 0.01, unit: 'm' });
  inRange('fingerBehind', fingerBehind, { min: 0, open: true, max: behind, unit: 'm' });
  const down = Math.hypot(fingerBehind, depth);
  const up = Math.hypot(behind - fingerBehind, nutHeight + depth);
  const deep = (sounding + down + up - open) / open;
  return 600 * Math.log2((1 + response.stretch * deep) / (1 + response.stretch * strain));
}
