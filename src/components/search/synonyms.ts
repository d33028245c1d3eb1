// Readers' words for what the pages call otherwise, as content/data/synonyms.yaml lists them.
import { z } from 'astro/zod';
import data from '../../../content/data/synonyms.yaml';
import { href } from '../href.ts';
import type { Piece } from './find.ts';

const schema = z.array(
  z.object({
    /** below the site's root: a page, a section of it, or an entry of a list */
    to: z.string().regex(/^[a-z0-9-]+\/([a-z0-9-]+\/)?(#[a-z0-9-]+)?$/),
    words: z.string().min(1),
  }),
);

export const synonyms = schema.parse(data).map(({ to, words }) => ({ url: href(to), words }));

const wordsFor = new Map(synonyms.map(({ url, words }) => [url, words]));

export const withWords = (pieces: readonly Piece[]): Piece[] =>
  pieces.map((piece) => {
    const words = [piece.words, wordsFor.get(piece.url)].flatMap((each) => each ?? []).join(', ');
    return words === '' ? piece : { ...piece, words };
  });
