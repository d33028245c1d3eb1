/** The words of the trade: each has one entry, each entry is used, and no chapter names a word that has none. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

import { entry, glossary, letterOf } from '../../src/components/glossary.ts';

const folder = new URL('../../content/course/', import.meta.url);
const chapters = readdirSync(folder)
  .filter((file) => file.endsWith('.mdx'))
  .map((file) => ({
    id: file.replace(/^\d+-|\.mdx$/g, ''),
    text: readFileSync(new URL(file, folder), 'utf8'),
  }));
const written = new Set(chapters.map(({ id }) => id));
const named = chapters.flatMap(({ text }) =>
  [...text.matchAll(/<Term\b([^>]*)>/g)].map(
    ([, attributes = '']) => /\bof="([^"]*)"/.exec(attributes)?.[1] ?? '',
  ),
);

/** The course has as many chapters as its plan. */
const PLANNED = 14;

describe('the glossary', () => {
  test('gives each id and each term once', () => {
    const ids = glossary.map(({ id }) => id);
    const terms = glossary.map(({ term }) => term.toLowerCase());
    expect(ids.length).toBeGreaterThan(0);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    expect(terms.filter((term, i) => terms.indexOf(term) !== i)).toEqual([]);
  });

  test('stands in the order of the alphabet, an article not counted', () => {
    const letters = glossary.map(letterOf);
    expect(letters).toEqual(letters.toSorted());
    expect(letterOf(entry('drawer'))).toBe('D');
  });

  test('says each word in one to three sentences', () => {
    const wrong = glossary.filter(({ text }) => {
      const ends = text.match(/[.?](?=\s+[A-Z]|$)/g)?.length ?? 0;
      return ends < 1 || ends > 3 || !text.endsWith('.');
    });
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  test('has every word that a chapter names', () => {
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((id) => !glossary.some((e) => e.id === id))).toEqual([]);
    expect(() => entry('no-such-word')).toThrow(RangeError);
  });

  test('has no word of a written chapter that no chapter names', () => {
    const unused = glossary.filter(
      ({ id, chapter, players }) => written.has(chapter) && !players && !named.includes(id),
    );
    expect(unused.map(({ id }) => id)).toEqual([]);
  });

  test('has players’ words only where no chapter names them, and sends each to a chapter that is written', () => {
    const players = glossary.filter((each) => each.players);
    expect(players.length).toBeGreaterThan(5);
    expect(players.filter(({ id }) => named.includes(id)).map(({ id }) => id)).toEqual([]);
    expect(players.filter(({ chapter }) => !written.has(chapter))).toEqual([]);
  });
});

test('chapters that are named and not written are no more than the plan has room for', () => {
  const needs = chapters.flatMap(({ text }) =>
    (/^needs: \[([^\]]*)\]$/m.exec(text)?.[1] ?? '').split(',').map((id) => id.trim()),
  );
  const unwritten = new Set(
    [...glossary.map(({ chapter }) => chapter), ...needs].filter(
      (id) => id !== '' && !written.has(id),
    ),
  );
  const room = PLANNED - written.size;
  expect([...unwritten].slice(Math.max(0, room))).toEqual([]);
});
