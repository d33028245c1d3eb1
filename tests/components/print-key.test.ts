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

const worked = { height: 34, isWorked: true };
const chosen = { height: 45, isWorked: false };
const ordered = { height: 76, isWorked: false };
test.each([
  [[worked, worked, worked, ordered]],
  [[worked, chosen, ordered, ordered, worked]],
  [[worked, chosen, worked, ordered, ordered, worked]],
  [[chosen, worked, ordered, worked, worked, worked, ordered]],
])('exercises fill two pages and no third: %#', (questions) => {
  const letter = 279.4 - 2 * 16;
  const space = spaceFor(questions);
  const pages = [[45]];
  for (const { height, isWorked } of questions) {
    const wanted = isWorked ? space : height;
    const last = pages.at(-1) ?? [];
    if (last.reduce((sum, each) => sum + each, wanted) > letter) pages.push([wanted]);
    else last.push(wanted);
  }
  expect(pages).toHaveLength(2);
  // There is space to work in, beyond what the question takes itself.
  expect(space).toBeGreaterThan(worked.height + 15);
  expect(pages.flat().reduce((sum, each) => sum + each, 0)).toBeGreaterThan(0.7 * 2 * letter);
});
