import { expect, it } from 'vitest';

import { inOrder } from '../../src/components/exercise.ts';
import { reportOf } from '../../src/exercises/report.ts';

it('a report lists every exercise with the day on which it was right', () => {
  const chapters = [
    { number: 1, title: 'Pull', keys: ['pull.mass', 'pull.own.two'] },
    { number: 2, title: 'Length', keys: ['length.inch'] },
  ];
  const days = new Map([['pull.own.two', '2031-05-04']]);
  const report = reportOf(chapters, (key) => days.get(key), '2031-05-06');
  expect(report.split('\n').map((line) => line.replace(/ +/g, ' ').trim())).toEqual([
    'Speaking Length: exercises answered right, as of 2031-05-06',
    '',
    '1. Pull: 1 of 2 right',
    'A not yet',
    'B 2031-05-04',
    '',
    '2. Length: 0 of 1 right',
    'A not yet',
    '',
  ]);
});

it('exercises are counted in the order in which the text asks them', () => {
  const text = '<Order k="b.one">…</Order> <Numeric k="b.oneMore">…</Numeric> <Choose k="b.two">';
  expect(inOrder(['b.two', 'b.oneMore', 'b.one'], text)).toEqual(['b.one', 'b.oneMore', 'b.two']);
});
