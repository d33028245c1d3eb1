// The sources of every number, as content/data/sources.yaml lists them.
import { z } from 'astro/zod';
import data from '../../content/data/sources.yaml';

const schema = z.array(
  z.object({
    id: z.string().regex(/^[a-z0-9-]+$/),
    /** what a citation in the text reads */
    short: z.string(),
    title: z.string(),
    authors: z.string().optional(),
    year: z.union([z.number(), z.string()]).optional(),
    where: z.string().optional(),
    url: z.url().optional(),
    doi: z.string().optional(),
    /** how far it was followed: read in a copy, read in a text that quotes it, recalled */
    status: z.enum(['read', 'second-hand', 'memory']),
    /** what is taken from it */
    used: z.string(),
  }),
);

export type Source = z.infer<typeof schema>[number];

export const sources: readonly Source[] = schema.parse(data);

/** The source of that id. Throws RangeError when the list has none. */
export function source(id: string): Source {
  const found = sources.find((s) => s.id === id);
  if (!found) throw new RangeError(`no source has the id ${id}`);
  return found;
}

/** How far a source was followed, in words. */
export const followed: Readonly<Record<Source['status'], string>> = {
  read: 'read',
  'second-hand': 'read as another text quotes it',
  memory: 'recalled, not checked against a copy',
};

/** Who wrote a source, when, and where it stands, on one line. */
export const imprint = ({ authors, year, where }: Source): string =>
  [authors, year, where]
    .filter(Boolean)
    .join(', ')
    .replace(/^./, (c) => c.toUpperCase());
