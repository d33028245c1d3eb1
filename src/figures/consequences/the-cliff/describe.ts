/** The cliff in words: margins as a table says them, the whole drawing, and what a drag has changed. */
import { formatLength, formatShare, spokenGauge, spokenNote } from '../../../instrument/format.ts';
import { pullsOf } from '../../../instrument/pulls.ts';
import type { State } from '../../../instrument/schema.ts';
import { nearestNote } from '../../../physics/index.ts';
import { triedOf } from '../../trial.ts';
import { marginOf, type Margin } from '../../kit/margin.ts';

const MINUS = '\u2212';

export function shareText({ share, strain }: Margin): string {
  if (!share) return 'not known';
  if (strain === 'broken') return 'breaks';
  const [low, high] = [formatShare(share.low), formatShare(share.high)];
  return low === high ? high : `${(share.low * 100).toFixed(0)} to ${high}`;
}

/** Semitones up (or, negative, back down) with one decimal. */
export function semitonesText(semitones: number | undefined): string {
  if (semitones === undefined) return 'not known';
  const size = Math.abs(semitones).toFixed(1);
  const sign = Number(size) === 0 ? '' : semitones < 0 ? MINUS : '+';
  return `${sign}${size}`;
}

/** The highest note that is not above a frequency in Hz. */
export function highestNoteBelow(frequency: number, a4: number): string {
  const { note, cents } = nearestNote(frequency, a4);
  // A hundredth of a cent is what conversions leave.
  return cents >= -0.01 ? note : nearestNote(frequency * 2 ** (-1 / 12), a4).note;
}

/** An interval in a sentence. */
export const size = (semitones = 0): string => `${Math.abs(semitones).toFixed(1)}\u00a0semitones`;

export function verdictOf({ strain, toEdge, toFence }: Margin): string {
  if (strain === 'unknown')
    return 'We know only the weight of this string, not its core, so we can’t draw its edge.';
  if (strain === 'broken') return 'Over the edge: the string breaks before it reaches this note.';
  if (toFence === undefined)
    return strain === 'caution'
      ? 'Within the range where a weak string breaks and a strong one holds.'
      : `Below the edge of a weak string by ${size(toEdge)}.`;
  if (strain === 'caution') return `Past the fence, with ${size(toEdge)} to the edge.`;
  return `Inside the fence: ${size(toFence)} to it, ${size(toEdge)} to the edge.`;
}

export function describeShort(state: State): string {
  const { tried } = triedOf(state);
  const margin = marginOf(tried);
  const string = `${spokenNote(tried.note)} at ${formatLength(tried.speakingLength, state.units)}`;
  const share =
    margin.share && margin.strain !== 'broken' ? `, ${shareText(margin)} of its strength` : '';
  return `${string}${share}. ${verdictOf(margin)}`;
}

export function describe(state: State): string {
  const each = pullsOf(state.mine).map(
    (p) => `${spokenNote(p.note)}, ${spokenGauge(p.gauge, state.units)}, ${shareText(marginOf(p))}`,
  );
  return `Pitch against speaking length, with the edge at which plain strings break falling from short to long. The instrument’s strings below it, with their share of strength: ${each.join('; ')}. Your string: ${describeShort(state)}`;
}
