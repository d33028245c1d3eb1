/** The rules' sheet, 360 units wide: half at the left, double at the right, one row a rule. */
import { reach } from './rules.ts';

export const sheet = {
  width: 360,
  left: 34,
  right: 326,
  first: 24,
  row: 98,
  strip: 40,
} as const;

export const perOctave = (sheet.right - sheet.left) / (reach.max - reach.min);

/** Where a factor stands, given as its logarithm to the base 2. */
export const along = (octaves: number): number => sheet.left + (octaves - reach.min) * perOctave;

export const heightFor = (rules: number): number => sheet.first + rules * sheet.row + 44;

/** The hairline where it lies on the rules: it shows on their wood, and passes behind what is lettered between them. */
export const onRules = (rules: number): string =>
  Array.from(
    { length: rules },
    (_, i) => `M0 ${sheet.first + i * sheet.row + 22} v${sheet.strip}`,
  ).join(' ');
