/** The common set that is on an instrument, and how another goes on. */
import { expect, test } from 'vitest';

import { withFamily } from '../../src/instrument/edit.ts';
import { fittingSets, setOn, withSet } from '../../src/instrument/set-on.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';

const six = workshopInstrument('redshank');

test('what goes on is what is on it, with the notes that were there', () => {
  for (const { name, gauges } of fittingSets(six)) {
    const strung = withSet(six, name);
    expect(setOn(strung)).toBe(name);
    expect(strung.strings.map(({ gauge }) => gauge)).toEqual(gauges.map(({ gauge }) => gauge));
    expect(strung.strings.map(({ note }) => note)).toEqual(six.strings.map(({ note }) => note));
  }
});

test('a set of another family brings its family', () => {
  const family = 'acoustic, phosphor bronze';
  const [first] = fittingSets(six, family);
  const strung = withSet(withFamily(six, family), first?.name ?? '');
  expect(new Set(strung.strings.map((each) => each.family))).toEqual(new Set([family]));
  expect(setOn(strung)).toBe(first?.name);
});

test('a set with another number of strings, or one that nobody knows, changes nothing', () => {
  const four = { ...six, strings: six.strings.slice(0, 4) };
  expect(withSet(four, setOn(six))).toBe(four);
  expect(withSet(six, 'no such set')).toBe(six);
  expect(
    setOn({ ...six, strings: six.strings.map((each) => ({ ...each, gauge: each.gauge + 0.5 })) }),
  ).toBe('');
});
