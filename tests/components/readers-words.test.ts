/** What readers call things leads to the page that speaks of them: it is among the first three that the search finds. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

import { pieces } from '../../src/components/search/documents.ts';
import { finder } from '../../src/components/search/find.ts';
import { moreInstruments } from '../../src/instrument/more-instruments.ts';
import { synonyms } from '../../src/components/search/synonyms.ts';

const field = (text: string, name: string): string =>
  (new RegExp(`^${name}: (.*)$`, 'm').exec(text)?.[1] ?? '').replace(/^['"]|['"]$/g, '');
const slugOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} -]/gu, '')
    .replace(/ /g, '-');
const files = (room: string) => {
  const folder = new URL(`../../content/${room}/`, import.meta.url);
  return readdirSync(folder)
    .filter((file) => file.endsWith('.mdx'))
    .map((file) => {
      const [, head = '', body = ''] =
        /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(new URL(file, folder), 'utf8')) ?? [];
      return {
        id: file.replace(/^\d+-|\.mdx$/g, ''),
        number: Number(field(head, 'number')),
        title: field(head, 'title'),
        question: field(head, 'question'),
        summary: field(head, 'summary'),
        needs: [],
        body,
        headings: [...body.matchAll(/^#{2,3} +(.+)$/gm)].map(([, text = '']) => ({
          slug: slugOf(text),
          text,
        })),
      };
    });
};

const all = pieces(files('course'), files('labs'));
const find = finder(all);

test('every address that has readers’ words is one that can be found', () => {
  const known = new Set(all.map(({ url }) => url));
  expect(synonyms.filter(({ url }) => !known.has(url))).toEqual([]);
  expect(new Set(synonyms.map(({ url }) => url)).size).toBe(synonyms.length);
});

test.each([
  ['floppy', 'course/what-the-hand-feels/'],
  ['loose strings', 'course/what-the-hand-feels/'],
  ['strings too tight', 'course/two-guitars-one-feel/'],
  ['too tight', 'course/what-the-hand-feels/'],
  ['lighter strings', 'course/two-guitars-one-feel/'],
  ['drop tuning', 'course/going-low/'],
  ['drop D', 'course/going-low/'],
  ['octave strings', 'reference/instruments/'],
  ['buzz', 'glossary/#relief'],
  ['buzzing', 'course/what-neck-and-bridge-carry/'],
  ['how to measure', 'course/speaking-length/#measuring-it'],
  ['measure scale length', 'course/speaking-length/#measuring-it'],
  ['slanted frets', 'course/a-scale-for-every-string/'],
  ['string keeps breaking', 'course/when-strings-break/'],
  ['out of tune', 'course/in-tune-up-the-neck/'],
  ['unknown string', 'labs/listen/'],
  ['mandolin', 'reference/instruments/'],
  ['ukulele', 'reference/instruments/'],
  ['uke', 'reference/instruments/'],
  ['banjo', 'reference/instruments/'],
  ['violin', 'reference/instruments/'],
  ['fiddle', 'reference/instruments/'],
  ['lap steel', 'reference/instruments/'],
  ['tenor guitar', 'reference/instruments/'],
  ['five-string bass', 'reference/instruments/'],
  ['bass', 'reference/instruments/'],
  ['tenor', 'reference/instruments/'],
  ['five-string banjo', 'reference/instruments/'],
  ['box guitar', 'reference/instruments/'],
  ['high-strung', 'reference/instruments/'],
  ['measure', 'course/speaking-length/#measuring-it'],
  ['floppy', 'glossary/#floppy'],
  ['slack', 'glossary/#slack'],
  ['too tight', 'glossary/#too-tight'],
  ['lighter strings', 'glossary/#lighter-strings'],
  ['heavier strings', 'glossary/#heavier-strings'],
  ['drop tuning', 'glossary/#drop-tuning'],
  ['octave strings', 'glossary/#octave-strings'],
  ['double courses', 'glossary/#course'],
  ['re-entrant', 'glossary/#re-entrant-tuning'],
  ['buzz', 'glossary/#buzz'],
  ['action', 'glossary/#action'],
  ['string height', 'glossary/#action'],
  ['set-up', 'glossary/#set-up'],
  ['setup', 'glossary/#set-up'],
])('“%s” leads to %s', (query, to) => {
  const first = find(query).slice(0, 3);
  const urls = first.flatMap(({ hits }) => hits.map(({ url }) => url));
  expect(urls.filter((url) => url.includes(to)).length, urls.join(' ')).toBeGreaterThan(0);
});

test.each([
  ...moreInstruments.map(({ instrument }) => instrument.name),
  ...[
    'mandolin',
    'ukulele',
    'uke',
    'banjo',
    'tenor guitar',
    'violin',
    'fiddle',
    'lap steel',
    'high-strung',
  ],
  ...['five-string bass', 'box guitar'],
])('“%s” leads to the instruments before anything else', (query) => {
  expect(find(query)[0]?.hits[0]?.url).toMatch(/reference\/instruments\/$/);
});
