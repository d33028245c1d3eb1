/** Within what the site draws and reckons. Lengths in m, frequencies in Hz, linear densities in kg/m; gauges in thousandths of an inch. */
import { noteNumber } from '../physics/index.ts';

export const limits = {
  scale: { min: 0.25, max: 1.1 },
  a4: { min: 380, max: 480 },
  note: { min: noteNumber('C0'), max: noteNumber('C7') },
  strings: { min: 1, max: 12 },
  /** The fret at which a string of its own length begins, and a capo */
  from: { min: 1, max: 12 },
  gauge: { min: 5, max: 200 },
  unitWeight: { min: 1e-5, max: 0.2 },
  factor: { min: 0.5, max: 1.5 },
  /** N, of all strings together */
  ceiling: { min: 20, max: 5000 },
  weight: { min: 0, max: 9 },
  fret: { min: 1, max: 24 },
  /** The square fret on a multi-scale board; 0 is the nut */
  square: { min: 0, max: 15 },
  /** cents */
  rise: { min: 25, max: 400 },
  /** Of string beyond nut and saddle */
  beyond: { min: 0, max: 0.5 },
  name: 40,
} as const;
