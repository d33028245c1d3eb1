/** A floating bridge to reckon with until the reader has measured one. */
import { fromMillimetres, type SprungBridge } from '../physics/index.ts';

export interface Measured extends Required<SprungBridge> {
  /** Travel of the claw's screws a turn, m */
  readonly pitch: number;
}

/** Invented typical values, no maker's: what a bridge on the bench might measure. */
export const benchBridge: Measured = {
  stringArm: fromMillimetres(10),
  springArm: fromMillimetres(38),
  rate: 2000,
  preload: 8,
  count: 3,
  pitch: fromMillimetres(2),
};

/** What can be drawn and reckoned with, in m and N/m. */
export const ranges = {
  stringArm: { min: 0.004, max: 0.018 },
  springArm: { min: 0.015, max: 0.055 },
  rate: { min: 300, max: 8000 },
  pitch: { min: 0.0005, max: 0.004 },
} as const;

export const fewestSprings = 1;
export const mostSprings = 5;

/** Two whole pulls for exercises on that bridge, N: a set as it was, and a heavier one. */
export const benchRounds = { before: 460, after: 510 } as const;
