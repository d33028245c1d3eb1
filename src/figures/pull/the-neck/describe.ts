/** The neck in words: whole for its text alternative, and what changed for the end of a drag. */
import {
  formatDifference,
  formatForce,
  formatLength,
  formatTotal,
  spokenNote,
} from '../../../instrument/format.ts';
import { hand } from '../../../instrument/hand.svelte.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';
import { isSame, laidOn, totalText } from '../../kit/scale-length/laid.ts';
import { feltWords } from './felt-words.ts';

const nameOf = ({ name }: Instrument): string => name || 'your instrument';

/** What stands under the drawing: the change, and what a hand may make of it. */
export function verdict(mine: Instrument, length: number, units: Units): string {
  const laid = laidOn(mine, length);
  const { change, felt } = laid;
  const own = formatLength(mine.scale.treble, units);
  if (isSame(laid)) return `The set at its own length, ${own}.`;
  const words = formatDifference(change).replace(/^[+−±]/, '');
  const way = change > 0 ? 'more' : 'less';
  return `At ${formatLength(length, units)} every string pulls ${words} ${way} than at ${own}: ${feltWords(felt, hand.low)}.`;
}

/** Every string by name. */
export function describe(mine: Instrument, length: number, units: Units): string {
  const pulls = pullsOf(mine, length / mine.scale.treble);
  const each = pulls.map(
    (p) =>
      `${spokenNote(p.note)} ${p.strain === 'broken' ? 'breaks' : formatForce(p.tension, units)}`,
  );
  return `The neck of ${nameOf(mine)} from above, its set laid on ${formatLength(length, units)}. Pull from the highest string: ${each.join(', ')}.`;
}

/** What the set pulls on every length that is laid beside: the chapter's guess asks for it. */
export function describeRows(mine: Instrument, marks: readonly number[], units: Units): string {
  const others = marks.map((mark) => {
    const laid = laidOn(mine, mark);
    return `${formatLength(mark, units)} ${totalText(laid, units)}`;
  });
  return `The whole set on other lengths: ${others.join(', ')}.`;
}

/** What a drag has changed. */
export function describeShort(mine: Instrument, length: number, units: Units): string {
  const { total } = laidOn(mine, length);
  const broken = pullsOf(mine, length / mine.scale.treble).filter((p) => p.strain === 'broken');
  const end =
    total === undefined
      ? `${broken.map((p) => spokenNote(p.note)).join(' and ')} would break.`
      : `Together ${formatTotal(total, units)}.`;
  return `${verdict(mine, length, units)} ${end}`;
}
