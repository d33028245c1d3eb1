/** Entries that hold every word typed, the one changed last first. */
import { nameOf, type BookRecord } from './schema.ts';

/** As it is compared: without case, accents and marks. */
export const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Diacritic}/gu, '')
    .toLowerCase();

const wordsOf = (record: BookRecord): string => {
  const texts = [nameOf(record)];
  for (const key of ['reference', 'note'] as const) {
    const text = (record as Record<string, unknown>)[key];
    if (typeof text === 'string') texts.push(text);
  }
  if ('right' in record && record.kind === 'job') {
    const job = record as { right: { name: string }; other: { name: string } };
    texts.push(job.right.name, job.other.name);
  }
  return folded(texts.join(' '));
};

export function find<T extends BookRecord>(records: readonly T[], typed: string): readonly T[] {
  const asked = folded(typed).split(/\s+/).filter(Boolean);
  return records
    .filter((record) => {
      const words = wordsOf(record);
      return asked.every((each) => words.includes(each));
    })
    .sort((a, b) => b.changed - a.changed);
}
