/** The key's words against the exercises' own answers, and the working space against two sheets of A4 (297 mm) and Letter (279 mm), ISO 216 and ANSI/ASME Y14.1. */
import { expect, test } from 'vitest';

import { inWords } from '../../src/components/print/key.ts';
import { spaceFor } from '../../src/components/print/lay-out.ts';
import { initialState } from '../../src/instrument/workshop.ts';

test('each kind of exercise has its answer in words, and no answer is said too', () => {
  const numeric = { kind: 'numeric', quantity: 'percent', tolerance: 1, mistakes: [] } as const;
  expect(inWords({ ...numeric, answer: () => 8 }, initialState)).toBe('+8.0\u00a0%');
  expect(inWords({ ...numeric, answer: () => Number.NaN }, initialState)).toContain('no answer');
  const throws = () => {
    throw new RangeError('no fifth string');
  };
  expect(inWords({ ...numeric, answer: throws }, initialState)).toContain('no answer');
  const options = () => [
    { id: 'a', label: 'less' },
    { id: 'b', label: 'more' },
  ];
  expect(inWords({ kind: 'choose', options, answer: () => 'b' }, initialState)).toBe('more');
  const items = () => [
    { id: 'a', label: 'most', value: 3 },
    { id: 'b', label: 'least', value: 1 },
  ];
  expect(inWords({ kind: 'order', items, ends: ['', ''], hint: '' }, initialState)).toBe(
    'least; most',
  );
});

test.each([4, 5, 6, 7, 8])('%i exercises fill two pages and no third', (count) => {
  const page = 279.4 - 2 * 16;
  const [first, second] = [Math.floor(count / 2), Math.ceil(count / 2)];
  const space = spaceFor(count);
  expect(second * space).toBeLessThanOrEqual(page);
  expect(first * space).toBeLessThanOrEqual(page - 45);
  expect(Math.max(first * space + 45, second * space)).toBeGreaterThan(0.7 * page);
});
