/** What the search's index holds of each chapter, and what is found in it. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

import { chapterPieces, pieces } from '../../src/components/search/documents.ts';
import { excerptOf, finder, marked, type Piece } from '../../src/components/search/find.ts';
import { plain, sectionsOf } from '../../src/components/search/plain.ts';
import { liveText } from '../../src/figures/quantities.ts';

const folder = new URL('../../content/course/', import.meta.url);
const files = readdirSync(folder).filter((file) => file.endsWith('.mdx'));
const bodyOf = (file: string) =>
  readFileSync(new URL(file, folder), 'utf8').replace(/^---\n[\s\S]*?\n---\n/, '');

const quantity = (key: string): string => {
  if (key !== 'own.pull') throw new RangeError(key);
  return '16.3 lb';
};

describe.each(files)('%s', (file) => {
  const body = bodyOf(file);
  const sections = sectionsOf(body, (key) => liveText(key, file.replace(/^\d+-|\.mdx$/g, '')));

  test('has all its headings', () => {
    const headings = body.split('\n').filter((line) => /^#{2,3} /.test(line));
    expect(headings.length).toBeGreaterThan(0);
    expect(sections.slice(1).map(({ heading }) => heading)).toEqual(
      headings.map((line) => line.replace(/^#+ /, '').trim()),
    );
  });

  test('is words, without tags, braces and equations’ code', () => {
    for (const { text } of sections) expect(text).not.toMatch(/<\/?[A-Za-z]|[{}$\\]|\*\*|="/);
  });
});

describe('text without its tags', () => {
  test.each([
    ['It pulls <Q k="own.pull" />.', 'It pulls 16.3 lb.'],
    ['a <Term of="pull">pull</Term>, said', 'a pull, said'],
    ['so <Cite id="callister" />. Then', 'so. Then'],
    ['<Step title="Divide" why="All cancels.">\nOne.\n</Step>', 'Divide. All cancels. One.'],
    ['at <DragLength />, it', 'at …, it'],
    ['speed $2Lf$ and $\\mu$', 'speed 2Lf and μ'],
    ['**Drag** the *saddle*.\n\n- one\n- two', 'Drag the saddle. one two'],
    ['{/* a remark */}Text [here](https://a.example).', 'Text here.'],
    ['<Guess id="a" options="A | B" answer="B">\nWhich?\n</Guess>', 'Which?'],
    ['<Tag n={{ a: 1 }} s={[1, 2]}>in</Tag>', 'in'],
  ])('%s', (mdx, text) => {
    expect(plain(mdx, quantity)).toBe(text);
  });

  test('asks for the numbers by name', () => {
    expect(() => plain('<Q k="no.such" />', quantity)).toThrow(RangeError);
  });
});

test('a chapter whose headings are not those of its page is refused', () => {
  const chapter = {
    id: 'a',
    number: 1,
    title: 'A',
    question: 'Q?',
    summary: 'S.',
    body: '## B\n\nb',
  };
  expect(() => chapterPieces({ ...chapter, headings: [] })).toThrow(RangeError);
  const [, section] = chapterPieces({ ...chapter, headings: [{ slug: 'b-1', text: 'B' }] });
  expect(section).toMatchObject({ title: 'B', text: 'b', page: 'Chapter 1, A' });
  expect(section?.url).toMatch(/course\/a\/#b-1$/);
});

test('every piece has a page, a title, a text and an address of its own', () => {
  const all = pieces([]);
  expect(all.filter(({ page, title, text }) => !page || !title || !text)).toEqual([]);
  expect(new Set(all.map(({ url }) => url)).size).toBe(all.length);
});

describe('finding', () => {
  const site: Piece[] = [
    { page: 'Chapter 1', title: 'Gauge', url: '/1/', text: 'How thick a string is.' },
    { page: 'Chapter 1', title: 'Travel', url: '/1/#t', text: 'A bend needs travel, not gauge.' },
    { page: 'Chapter 2', title: 'Relief', url: '/2/', text: 'The neck’s bow under pull.' },
    { page: 'Sources', title: 'On relief', url: '/s/', text: 'Relief of necks, relief of wood.' },
  ];
  const find = finder(site);
  const urls = (query: string) => find(query).flatMap(({ hits }) => hits.map(({ url }) => url));

  test('a title counts more than a mention, and the list of sources least', () => {
    expect(urls('gauge')).toEqual(['/1/', '/1/#t']);
    expect(urls('relief')).toEqual(['/2/', '/s/']);
  });

  test.each([
    ['reli', '/2/'],
    ['releif', '/2/'],
    ['RELIEF', '/2/'],
    ['neck', '/2/'],
  ])('%s is enough', (query, url) => {
    expect(urls(query)).toContain(url);
  });

  test('all words count before any of them does', () => {
    expect(urls('gauge travel')).toEqual(['/1/#t']);
    expect(urls('travel relief')).toEqual(expect.arrayContaining(['/1/#t', '/2/']));
  });

  test('pages come as groups', () => {
    expect(find('gauge').map(({ page, hits }) => [page, hits.length])).toEqual([['Chapter 1', 2]]);
  });

  test.each(['xylophone', '', '…'])('“%s” finds nothing', (query) => {
    expect(find(query)).toEqual([]);
  });
});

test('hits are marked as whole words, and the text stays what it was', () => {
  const runs = marked('Strings of a neck; the neck’s relief.', new Set(['neck']));
  expect(runs.map(({ text }) => text).join('')).toBe('Strings of a neck; the neck’s relief.');
  expect(runs.filter(({ hit }) => hit).map(({ text }) => text)).toEqual(['neck', 'neck’s']);
});

test('an excerpt holds the first hit and is cut between words', () => {
  const long = `${'before it '.repeat(60)}relief ${'and after '.repeat(60)}`.trim();
  const text = excerptOf(long, new Set(['relief']))
    .map((run) => run.text)
    .join('');
  expect(text).toMatch(/^… (before|it) .*\brelief\b.* …$/);
  expect(text.length).toBeLessThan(180);
  expect(excerptOf('Short.', new Set(['none']))).toEqual([{ text: 'Short.', hit: false }]);
});
