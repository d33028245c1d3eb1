/** Whether what was measured is what was predicted, given how sure each of the two is. */
import type { Estimate } from '../../../physics/index.ts';

export interface Comparison {
  /** measured less predicted, in their unit */
  readonly difference: number;
  /** of that difference, one standard deviation */
  readonly doubt: number;
  readonly agree: boolean;
}

/** Two doubts either way hold about 95 of a hundred differences that are nothing but chance: JCGM 100:2008, 6.3.3. */
const WITHIN = 2;

export function compared(predicted: Estimate, measured: Estimate): Comparison {
  const difference = measured.value - predicted.value;
  const doubt = Math.hypot(predicted.uncertainty, measured.uncertainty);
  return { difference, doubt, agree: Math.abs(difference) <= WITHIN * doubt };
}

/** So many decimals that the doubt keeps one digit, or two where it begins with 1 or 2: a number says no more than it knows. */
export function decimalsFor(doubt: number): number {
  if (!(doubt > 0)) return 3;
  const power = Math.floor(Math.log10(doubt));
  const more = doubt / 10 ** power < 3 ? 1 : 0;
  return Math.max(0, Math.min(6, more - power));
}

/** So many decimals that ticks so far apart differ, of an axis whose steps are 1, 2 or 5 of a power of ten. */
export const decimalsOfStep = (step: number): number =>
  Math.max(0, -Math.floor(Math.log10(step) + 1e-9));

/** Without a minus before nothing. */
export const fixed = (value: number, digits: number): string =>
  value
    .toFixed(digits)
    .replace(/^-(?=[0.]*$)/, '')
    .replace('-', '\u2212');

/** "0.399 ± 0.003 g/m", value and doubt in the unit that is named, or none where a heading names it. */
export function withDoubt({ value, uncertainty }: Estimate, unit = ''): string {
  const digits = decimalsFor(uncertainty);
  return `${fixed(value, digits)}\u00a0±\u00a0${uncertainty.toFixed(digits)}${unit && `\u00a0${unit}`}`;
}

export const scaled = ({ value, uncertainty }: Estimate, by: number): Estimate => ({
  value: value * by,
  uncertainty: uncertainty * by,
});

export const percent = (share: number): string =>
  `${share < 0 ? '\u2212' : ''}${Math.abs(100 * share).toFixed(Math.abs(share) < 0.0995 ? 1 : 0)}\u00a0%`;

/** The verdict in words. `look` says where to look when the two part. */
export function verdict(predicted: Estimate, measured: Estimate, look: string): string {
  const { difference, agree } = compared(predicted, measured);
  const off = percent(Math.abs(difference) / predicted.value);
  if (agree && off === percent(0)) return 'They agree. You measured just what was predicted.';
  const by = `${off} ${difference < 0 ? 'less' : 'more'} than predicted`;
  return agree
    ? `They agree. You measured ${by}, and that’s within their doubts.`
    : `They differ by more than both doubts: you measured ${by}. ${look}`;
}
