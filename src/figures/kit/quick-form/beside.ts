/** What a hand that knows one instrument would say of another: string beside string, in words. */
import { sortOf } from '../../../instrument/family-names.ts';
import { formatLength, formatShare } from '../../../instrument/format.ts';
import { hand } from '../../../instrument/hand.svelte.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';
import { felt, worstFelt, type Felt } from '../../../physics/index.ts';

const says: Readonly<Record<Felt, string>> = {
  'you’d be guessing': 'You’d probably not notice.',
  'some hands would tell': 'Some hands would notice.',
  'nearly any hand would tell': 'Nearly any hand would notice.',
};

const per = (difference: number): string =>
  `${formatShare(Math.abs(difference))} ${difference < 0 ? 'less' : 'more'}`;

/** From the least to the most of the strings' differences: "12 % less", "3 to 12 % less", "up to 21 % less", "from 2 % less to 5 % more". */
function span(differences: readonly number[]): string {
  const least = Math.min(...differences);
  const most = Math.max(...differences);
  const size = (difference: number) => formatShare(Math.abs(difference));
  if (size(least) === size(most) && least * most >= 0) return per(most);
  if (least * most < 0) return `from ${per(least)} to ${per(most)}`;
  const [near, far] = most <= 0 ? [most, least] : [least, most];
  const from = Math.round(100 * Math.abs(near));
  return from === 0 ? `up to ${per(far)}` : `${from} to ${per(far)}`;
}

/** Empty where the two can't be compared, or nothing is another. */
export function besideText(now: Instrument, before: Instrument, units: Units): string {
  const known = pullsOf(before);
  const pulls = pullsOf(now);
  const isComparable =
    known.length === pulls.length &&
    sortOf(now.strings[0]?.family) === sortOf(before.strings[0]?.family);
  if (!isComparable || [...known, ...pulls].some(({ strain }) => strain === 'broken')) return '';
  const differences = pulls.map(({ tension }, i) => tension / (known[i]?.tension ?? NaN) - 1);
  if (differences.every((each) => Math.abs(each) < 0.005)) return '';
  const worst = worstFelt(differences.map((each) => felt(each, 'pull', hand.thresholds.pull)));
  const name = before.name || 'the last one';
  return `Each string pulls ${span(differences)} than on ${name}, ${formatLength(before.scale.treble, units)}. ${worst ? says[worst] : ''}`;
}
