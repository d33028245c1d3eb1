/** What a class's rows say together, in sentences. */
import { fixed, percent } from '../kit/agree.ts';
import { comparedLabs, type ComparedLab } from '../kit/class/row-text.ts';
import type { Curve, Pooled } from './pooled.ts';

const amount = (value: number, isShare: boolean): string =>
  isShare ? percent(Math.abs(value)) : `${fixed(Math.abs(value), 1)}\u00a0cents`;
const names = (all: readonly string[]): string =>
  all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;

/** What is said of rows that were taken in without their check digits, from a tally written by hand. */
export const uncheckedWords = (who: readonly string[]): string =>
  `${names(who)} came without check digits: compare ${who.length === 1 ? 'that row' : 'those rows'} with the paper once more.`;

export function pooledWords(all: Pooled, lab: ComparedLab): readonly string[] {
  const { offs, mean, spread, isShare } = all;
  const { what } = comparedLabs[lab];
  const [only] = offs;
  if (spread === undefined)
    return [
      `One row so far: ${only?.row.who} measured ${amount(mean, isShare)} ${mean < 0 ? 'less' : 'more'} than predicted.`,
    ];
  const out = offs.filter(({ agrees }) => !agrees).map(({ row }) => row.who);
  const standard = spread / Math.sqrt(offs.length);
  return [
    `${offs.length} rows. On average the ${what} came out ${amount(mean, isShare)} ${mean < 0 ? 'lower' : 'higher'} than predicted. The rows scatter by ${amount(spread, isShare)}, so the average is known to about ${amount(standard, isShare)}.`,
    Math.abs(mean) <= 2 * standard
      ? 'The class as a whole agrees with the prediction.'
      : 'The class as a whole is off the prediction by more than its scatter explains. What do all of you share: the scale, the ruler, the gauge on the packet?',
    out.length === 0
      ? 'Each row agrees with its own prediction.'
      : `${names(out)} ${out.length === 1 ? 'differs' : 'differ'} by more than both doubts: look at ${out.length === 1 ? 'that reading' : 'those readings'} together.`,
  ];
}

export function handsWords(curve: Curve, published: number): readonly string[] {
  const { hands, judgements, found, each } = curve;
  const first = `${hands} ${hands === 1 ? 'hand' : 'hands'}, ${judgements} judgements.`;
  if (!found) return [`${first} They don’t settle on a threshold yet.`];
  const said = [
    `${first} Taken as one hand, its threshold is ${percent(found.value)}, likely between ${percent(found.low)} and ${percent(found.high)}; the published one is ${percent(published)}.`,
  ];
  const [least, most] = [each[0], each.at(-1)];
  if (least && most && each.length > 1)
    said.push(
      `Hand by hand it runs from ${percent(least.found.value)} (${least.who}) to ${percent(most.found.value)} (${most.who}). Much of that is chance: one session leaves a factor of two open.`,
    );
  return said;
}
