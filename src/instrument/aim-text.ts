/** What the picks aim for, in words: on the sheet, on paper, in the file, and where a chapter shows the same picks. */
import { formatTotal } from './format.ts';
import type { State } from './schema.ts';

const sensations = [
  ['pull', 'pull'],
  ['push', 'push of the bend'],
  ['travel', 'travel of the bend'],
] as const;

const listed = (words: readonly string[]): string =>
  words.length > 1 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : (words[0] ?? '');

/** "90 % of Redshank’s pull, string for string". */
export function aimText({ mine, aim, units }: Pick<State, 'mine' | 'aim' | 'units'>): string {
  const { factor, mode, weights, kinds, ceiling } = aim;
  const whose = mine.name ? `${mine.name}’s` : 'your';
  const what = listed(sensations.flatMap(([s, words]) => (weights[s] > 0 ? [words] : [])));
  const share = factor === 1 ? '' : `${Number((factor * 100).toFixed(1))}\u00a0% of `;
  const alike = mode === 'even' ? 'the same on all strings' : 'string for string';
  const swaps = kinds === 'any' ? '; plain and wound may change places' : '';
  const most =
    ceiling === undefined
      ? ''
      : `; together no more than ${ceiling === 'now' ? 'now' : formatTotal(ceiling, units)}`;
  return `${share}${whose} ${what}, ${alike}${swaps}${most}`;
}

/** True where the aim is something else than each string's own pull. */
export const aimsElsewhere = ({ aim }: Pick<State, 'aim'>): boolean =>
  aim.factor !== 1 ||
  aim.ceiling !== undefined ||
  aim.mode === 'even' ||
  aim.weights.push + aim.weights.travel > 0;
