// The words of the trade, as content/data/glossary.yaml lists them.
import { z } from 'astro/zod';
import data from '../../content/data/glossary.yaml';

const schema = z.array(
  z.object({
    id: z.string().regex(/^[a-z0-9-]+$/),
    /** the word as a heading */
    term: z.string().min(1),
    /** one to three sentences that stand alone */
    text: z.string().min(1),
    /** the chapter that explains the word, or what it stands for */
    chapter: z.string().regex(/^[a-z0-9-]+$/),
    /** said by players; the chapters say it otherwise */
    players: z.boolean().optional(),
  }),
);

export type Entry = z.infer<typeof schema>[number];

const collator = new Intl.Collator('en-GB', { sensitivity: 'base', ignorePunctuation: true });

/** What a word is sorted under: an article before it does not count. */
const sortKey = (term: string): string => term.replace(/^the /i, '');

/** Every entry, in the order of the alphabet. */
export const glossary: readonly Entry[] = schema
  .parse(data)
  .toSorted((a, b) => collator.compare(sortKey(a.term), sortKey(b.term)));

/** The letter that an entry stands under. */
export const letterOf = ({ term }: Entry): string => sortKey(term).charAt(0).toUpperCase();

/** The entry of that id. Throws RangeError when the glossary has none. */
export function entry(id: string): Entry {
  const found = glossary.find((e) => e.id === id);
  if (!found)
    throw new RangeError(
      `term is "${id}"; permitted: ${glossary.map((e) => e.id).join(', ')} (content/data/glossary.yaml)`,
    );
  return found;
}
