// Finds pieces of the site by their words. Loaded with its index when a reader first opens the search.
import MiniSearch from 'minisearch';

/** What is found as one: a section, a word, a sheet. */
export interface Piece {
  /** the page or list that it stands on, as the results name it */
  readonly page: string;
  readonly title: string;
  readonly url: string;
  readonly text: string;
  /** What readers call it, which stands nowhere on the page */
  readonly words?: string;
}

export interface Run {
  readonly text: string;
  readonly hit: boolean;
}

export interface Hit {
  readonly title: readonly Run[];
  readonly excerpt: readonly Run[];
  readonly url: string;
}

export interface Group {
  readonly page: string;
  readonly hits: readonly Hit[];
}

const PAGES = 8;
const HITS = 4;
const AROUND = 150;

const fold = (word: string): string =>
  word
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[’']s?$/u, '')
    .toLowerCase();

/** Words of a question that no piece is about. */
const asides = new Set(
  'a an and are at do does for how i in is it its my of on or that the this to was what when where which why with your'.split(
    ' ',
  ),
);

const word = /[\p{L}\p{N}][\p{L}\p{N}\p{M}’'.]*[\p{L}\p{N}\p{M}]|[\p{L}\p{N}]/gu;

const wordsOf = (text: string): string[] => text.match(word) ?? [];

/** The text in runs, those marked whose word is one of `terms`. */
export function marked(text: string, terms: ReadonlySet<string>): Run[] {
  const runs: Run[] = [];
  let done = 0;
  for (const match of text.matchAll(word)) {
    if (!terms.has(fold(match[0]))) continue;
    if (match.index > done) runs.push({ text: text.slice(done, match.index), hit: false });
    done = match.index + match[0].length;
    runs.push({ text: match[0], hit: true });
  }
  if (done < text.length) runs.push({ text: text.slice(done), hit: false });
  return runs;
}

/** A line or two of the text around its first such word, cut between words. */
export function excerptOf(text: string, terms: ReadonlySet<string>): Run[] {
  const first = [...text.matchAll(word)].find((match) => terms.has(fold(match[0])))?.index ?? 0;
  let from = Math.max(0, first - AROUND / 3);
  if (from > 0) from = text.indexOf(' ', from) + 1;
  let to = Math.min(text.length, from + AROUND);
  if (to < text.length) to = Math.max(text.lastIndexOf(' ', to), first);
  const cut = text.slice(from, to);
  return marked(`${from > 0 ? '… ' : ''}${cut}${to < text.length ? ' …' : ''}`, terms);
}

/** A search over these pieces: best pages first, and on each its best pieces. */
export function finder(pieces: readonly Piece[]): (query: string) => Group[] {
  const index = new MiniSearch<Piece & { id: number }>({
    fields: ['title', 'page', 'text', 'words'],
    tokenize: wordsOf,
    processTerm: (term) => {
      const folded = fold(term);
      return folded === '' || asides.has(folded) ? null : folded;
    },
    searchOptions: {
      boost: { title: 4, page: 2, words: 4 },
      prefix: (term) => term.length > 1,
      // Two letters that changed places are two edits.
      fuzzy: (term) => (term.length > 5 ? 2 : term.length > 4 ? 1 : false),
      boostDocument: (id) => (pieces[Number(id)]?.page === 'Sources' ? 0.4 : 1),
    },
  });
  index.addAll(pieces.map((piece, id) => ({ ...piece, id })));

  return (query) => {
    const every = index.search(query, { combineWith: 'AND' });
    const found = every.length > 0 ? every : index.search(query);
    const groups = new Map<string, Hit[]>();
    // Who mistypes a word seldom mistypes its beginning, and another one is another word: ring is no string.
    const beginnings = new Set(wordsOf(query).map((each) => fold(each)[0]));
    for (const { id, terms } of found) {
      const piece = pieces[Number(id)];
      const matched = new Set(terms.filter((term) => beginnings.has(term[0])));
      if (!piece || matched.size === 0) continue;
      const hits = groups.get(piece.page) ?? [];
      if (!groups.has(piece.page) && groups.size === PAGES) continue;
      groups.set(piece.page, hits);
      if (hits.length === HITS) continue;
      hits.push({
        title: marked(piece.title, matched),
        excerpt: excerptOf(piece.text, matched),
        url: piece.url,
      });
    }
    return [...groups].map(([page, hits]) => ({ page, hits }));
  };
}
