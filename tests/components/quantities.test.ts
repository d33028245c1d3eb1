/** Every live number that can be named is named somewhere, and nowhere where it would not follow. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { liveText, ownQuantitiesOf, quantitiesOf } from '../../src/figures/quantities.ts';

const folder = new URL('../../content/course/', import.meta.url);
const chapters = readdirSync(folder).map((file) => ({
  id: file.replace(/^\d+-|\.mdx$/g, ''),
  text: readFileSync(new URL(file, folder), 'utf8'),
}));

/** Names in `<Q k="…" />` and in `\live{…}`. */
const namedIn = (text: string): string[] => [
  ...[...text.matchAll(/<Q k="([^"]+)"/g)].map(([, key = '']) => key),
  ...[...text.matchAll(/\\live(?:\[\d+\])?\{([^{}]+)\}/g)].map(([, key = '']) => key),
];

test.each(chapters)('$id names only numbers that its page loads', ({ id, text }) => {
  const known = Object.keys(quantitiesOf(id));
  expect(namedIn(text).filter((key) => !known.includes(key))).toEqual([]);
});

test.each(chapters)('$id names all of its own numbers', ({ id, text }) => {
  const named = new Set(namedIn(text));
  expect(Object.keys(ownQuantitiesOf(id)).filter((key) => !named.has(key))).toEqual([]);
});

test('each common number is named in a chapter', () => {
  const named = new Set(chapters.flatMap(({ text }) => namedIn(text)));
  expect(Object.keys(ownQuantitiesOf('common')).filter((key) => !named.has(key))).toEqual([]);
});

test('a number of another chapter is refused, by its name', () => {
  const [key = ''] = Object.keys(ownQuantitiesOf('bending'));
  expect(() => liveText(key, 'bending')).not.toThrow();
  expect(() => liveText(key, 'two-guitars-one-feel')).toThrow(`key is "${key}"`);
});

test.each(chapters)('$id tells gauges in mm to who reads in mm', ({ id }) => {
  // A gauge that stands nowhere but on this string.
  const gauges = [10.37, 13.73, 17.37, 26.73, 36.37, 46.73];
  const own = workshopInstrument('redshank');
  const mine = {
    ...own,
    strings: own.strings.map((each, i) => ({ ...each, gauge: gauges[i] ?? each.gauge })),
  };
  for (const string of gauges.keys())
    for (const [name, quantity] of Object.entries(quantitiesOf(id))) {
      const text = quantity({ ...initialState, mine, units: 'mm-N', trial: { string } });
      expect(text, name).not.toMatch(/thousandth/);
      for (const gauge of gauges)
        expect(text, name).not.toMatch(new RegExp(`(?<![\\d.])${gauge}(?:\\u00a0w)?$`));
    }
});
