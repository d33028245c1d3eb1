/** What the model leaves out, and how large each error is, for the workshop's six-string. */
import { millimetres } from '../../physics/index.ts';
import {
  clamped,
  drawnAside,
  flats,
  nylonStrain,
  pinned,
  plating,
  PLUCK,
  strains,
  warmth,
  WARMER,
  withWrap,
  type Range,
} from './idealised.ts';

const gap = '\u00a0';
/** A share in per cent, whichever way it goes. */
export const size = (share: number, digits = 1): string =>
  `${(100 * Math.abs(share)).toFixed(digits)}${gap}%`;
/** Two shares in per cent, the smaller first. */
export const between = ({ low, high }: Range, digits = 1): string =>
  `${(100 * Math.min(Math.abs(low), Math.abs(high))).toFixed(digits)} to ${size(Math.max(Math.abs(low), Math.abs(high)), digits)}`;

export const nickel = withWrap('nickel');
const stainless = withWrap('stainless430');
const bronze = withWrap('phosphorBronze');
export const warm = warmth();

export const leftOut = [
  {
    what: 'String thins as it is stretched',
    effect: `pull ${between(strains)} less`,
    note: 'steel',
  },
  {
    what: 'The same, nylon: taken into account',
    effect: `pull ${between(nylonStrain, 0)} less`,
    note: 'how far it gives is uncertain',
  },
  {
    what: 'Wrap on the flats, not the corners',
    effect: `weight ${between(flats)} less`,
    note: 'wound',
  },
  {
    what: 'Plating of unknown thickness',
    effect: `wrap up to ${size(plating)} more`,
    note: 'wound',
  },
  {
    what: 'Wrap of nickel in place of plated steel',
    effect: `weight ${between(nickel)} more`,
    note: 'wound',
  },
  {
    what: 'Wrap of stainless steel, grade 430',
    effect: `weight ${between(stainless)} less`,
    note: 'wound',
  },
  { what: 'Wrap of phosphor bronze', effect: `weight ${between(bronze)} more`, note: 'wound' },
  {
    what: 'Stiffness, ends on knife edges',
    effect: `${pinned.low.toFixed(3)} to ${pinned.high.toFixed(2)}${gap}cents up`,
    note: 'all six',
  },
  {
    what: 'Stiffness, ends held as in a vice',
    effect: `pull ${between(clamped)} less`,
    note: 'all six',
  },
  {
    what: `Drawn ${millimetres(PLUCK).toFixed(0)}${gap}mm aside at the middle`,
    effect: `pull ${size(drawnAside(PLUCK), 2)} more`,
    note: 'treble',
  },
  {
    what: `${WARMER} degrees warmer, not retuned`,
    effect: `pull ${size(warm.pull)} less, ${Math.abs(warm.cents).toFixed(0)}${gap}cents flat`,
    note: 'treble',
  },
];
