/** Where a lab's result goes on a job's card: to the string that has its note, and into the words. What stands there stays. */
import type { JobRecord, Measured } from '../../../../instrument/book/schema.ts';

export const sides = ['before', 'after'] as const;
export type Side = (typeof sides)[number];

export interface ForCard {
  /** The note of the string, and its place on the instrument that was measured */
  readonly note: string;
  readonly index: number;
  /** As the card's column for intonation has it: "3 cents sharp" */
  readonly intonation?: string;
  /** As the card's words have it: what, of which string, with its ± */
  readonly words: string;
}

/** What the card's own fields hold */
const LONGEST = { cell: 60, words: 4000 } as const;

/** Where on the job's instrument the string lies; undefined where no string of it has that note. */
export function placeOn(job: JobRecord, { note, index }: ForCard): number | undefined {
  const notes = job.other.strings.map((string) => string.note);
  const at = notes[index] === note ? index : notes.indexOf(note);
  return at < 0 ? undefined : at;
}

/** One after the other, each once; undefined where both are too long. */
function joined(was: string, more: string, by: string, longest: number): string | undefined {
  if (was.split(by).includes(more)) return was;
  const both = was.trim() === '' ? more : `${was}${by}${more}`;
  return both.length <= longest ? both : undefined;
}

/** What was measured on that side, with the result added; undefined where the card has no room left for it. */
export function onCard(job: JobRecord, side: Side, result: ForCard): Measured | undefined {
  const was: Measured = job[side] ?? {};
  const at = placeOn(job, result);
  if (result.intonation !== undefined && at !== undefined) {
    const count = Math.max(job.other.strings.length, was.intonation?.length ?? 0);
    const list = Array.from({ length: count }, (_, i) => was.intonation?.[i] ?? '');
    const cell = joined(list[at] ?? '', result.intonation, '; ', LONGEST.cell);
    if (cell !== undefined) return { ...was, intonation: list.with(at, cell) };
  }
  const words = joined(was.words ?? '', result.words, '\n', LONGEST.words);
  return words === undefined ? undefined : { ...was, words };
}
