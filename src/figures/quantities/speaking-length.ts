/** The numbers of the chapter "Speaking length" that follow the reader's instrument, or that the physics works out. */
import {
  formatDifference,
  formatLength,
  formatShare,
  formatTotal,
} from '../../instrument/format.ts';
import { pullsOf, totalPull } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import { FELT_LOW, fromInches } from '../../physics/index.ts';
import { lengthForChange, pullChange, squareParts } from '../../instrument/length-law.ts';
import { readingOf } from '../pull/how-to-measure/reading.ts';
import { isSame, laidOn, totalText } from '../kit/scale-length/laid.ts';
import type { Quantity } from './common.ts';
import { lengthRatioOf, mainScale } from '../trial.ts';

const INCH = fromInches(1);
const STANDARD = fromInches(25.5);

/** What the rule reads in the first exercise, m. It is a round number in inches and in millimetres. */
const exerciseHalf = fromInches(12.5);

/** The same from 25.5 in to `to` inches, for every reader. */
const from25 = (to: number): number => pullChange(fromInches(to) / STANDARD);
const inch25 = squareParts(STANDARD, STANDARD + INCH);

const longer = (s: State) => squareParts(mainScale(s), mainScale(s) + INCH);
const shorter = (s: State) => squareParts(mainScale(s), mainScale(s) - INCH);
const band = (change: number) => (s: State) => lengthForChange(mainScale(s), change);
const bare = (share: number): string => (share * 100).toFixed(2);

export const quantities: Readonly<Record<string, Quantity>> = {
  'speaking.inchOf25': () => formatShare(inch25.strip, 1),
  'speaking.cornerOf25': () => formatShare(inch25.corner, 1),
  'speaking.inchOn25': () => formatShare(inch25.whole, 1),
  'speaking.shortOn25': () => formatShare(-from25(22.5)),
  'speaking.longOn25': () => formatShare(from25(27)),

  'speaking.half': (s) => formatLength(mainScale(s) / 2, s.units),
  'speaking.total': (s) => {
    const laid = laidOn(s.mine, mainScale(s) * lengthRatioOf(s));
    return laid.total === undefined ? 'more than its strings hold' : totalText(laid, s.units);
  },
  'speaking.change': (s) => {
    const laid = laidOn(s.mine, mainScale(s) * lengthRatioOf(s));
    if (isSame(laid)) return 'its own pull';
    return `${formatShare(Math.abs(laid.change), 1)} ${laid.change > 0 ? 'more' : 'less'} than its own pull`;
  },
  'speaking.bandLow': (s) => formatLength(band(-FELT_LOW)(s), s.units),
  'speaking.bandHigh': (s) => formatLength(band(FELT_LOW)(s), s.units),
  'speaking.inchLonger': (s) => formatLength(mainScale(s) + INCH, s.units),
  'speaking.inchMore': (s) => formatDifference(longer(s).whole),
  'speaking.inchLess': (s) => formatDifference(shorter(s).whole),
  'speaking.totalLonger': (s) =>
    formatTotal(totalPull(pullsOf(s.mine)) * (1 + longer(s).whole), s.units),
  'speaking.open': (s) => formatShare(readingOf(mainScale(s) / 2).pull, 2),

  'speaking.strip': (s) => formatShare(longer(s).strip, 2),
  'speaking.corner': (s) => formatShare(longer(s).corner, 2),
  'speaking.eqStrip': (s) => bare(longer(s).strip),
  'speaking.eqCorner': (s) => bare(longer(s).corner),
  'speaking.eqWhole': (s) => bare(longer(s).whole),

  'speaking.reading': (s) => formatLength(exerciseHalf, s.units),
  'speaking.readingScale': (s) => formatLength(2 * exerciseHalf, s.units),
  'speaking.rootOf7': () => Math.sqrt(1 + FELT_LOW).toFixed(4),
};
