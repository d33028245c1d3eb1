/** How high strings commonly lie: one nut and one action for every page that presses a string down. Common practice, no source. */
import type { Action } from '../physics/index.ts';
import { isSoft, type Family } from './family-names.ts';

/** Of a string above the plane of the frets at the nut, m; common practice. */
export const NUT_HEIGHT = 0.0004;

/** Longer scales than this, in m, are basses here. */
const BASS = 0.76;

/** Height above the twelfth fret, m, that is commonly set where strings of this family run over this length (m). */
export function usualHeightOf(family: Family | undefined, length: number): number {
  if (isSoft(family)) return 0.0035;
  return length > BASS ? 0.0024 : 0.0018;
}

/** A string that lies `height` m above the twelfth fret, in the middle between nut and saddle. */
export const actionAt = (scaleLength: number, height: number): Action => ({
  scaleLength,
  nutHeight: NUT_HEIGHT,
  saddleHeight: 2 * height - NUT_HEIGHT,
});
