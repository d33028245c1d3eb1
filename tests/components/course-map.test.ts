/** The course as a map: what stands where, and which lines it has. */
import { expect, test } from 'vitest';

import { courseMap, drawn, fretsOf, type Chapter } from '../../src/components/course-map.ts';

const chapter = (number: number, part: string, needs: string[] = []): Chapter => ({
  id: `c${number}`,
  number,
  title: `Chapter ${number}`,
  part,
  question: 'What?',
  minutes: 10,
  needs,
});

const three = [chapter(9, 'Choosing', ['c2']), chapter(1, 'Pull'), chapter(2, 'Pull', ['c1'])];

test('chapters stand in the order of their numbers, one to a fret, each on its part’s string', () => {
  const { parts, stations } = courseMap(three);
  expect(parts.map(({ name }) => name)).toEqual(['Pull', 'Choosing']);
  expect(stations.map(({ number, fret, string }) => [number, fret, string])).toEqual([
    [1, 0, 0],
    [2, 1, 0],
    [9, 2, 1],
  ]);
});

test('a line leads from each chapter to those that need it directly, and to none that is not written', () => {
  const { lines, stations } = courseMap([...three, chapter(10, 'Choosing', ['c1', 'c7', 'c9'])]);
  expect(lines.map(({ from, to }) => `${from.number}-${to.number}`)).toEqual([
    '1-2',
    '2-9',
    '9-10',
  ]);
  expect(stations.at(-1)?.on.map(({ id }) => id)).toEqual(['c1', 'c9']);
});

test('fourteen chapters in four parts have their places', () => {
  const names = ['Pull', 'Feel', 'Choosing', 'Consequences'];
  const all = Array.from({ length: 14 }, (_, i) =>
    chapter(i + 1, names[Math.floor(i / 4)] ?? '', i > 0 ? [`c${i}`] : []),
  );
  const { parts, lines } = courseMap(all);
  expect(parts).toHaveLength(4);
  expect(lines).toHaveLength(13);
});

test('a chapter that needs a later one or itself is refused', () => {
  expect(() => courseMap([chapter(1, 'Pull', ['c2']), chapter(2, 'Pull')])).toThrow(RangeError);
  expect(() => courseMap([chapter(1, 'Pull', ['c1'])])).toThrow(RangeError);
});

test('a line is ruled from dot to dot, lying and standing, and bowed along its own string', () => {
  const { lines, stations } = courseMap([...three, chapter(10, 'Choosing', ['c1'])]);
  const [first, , across] = lines;
  if (!first || !across) throw new Error('lines are missing');
  const [a, b, , d] = stations.map(({ along }) => along);
  expect(drawn(first, false)).toBe(`M${a} 0.5L${b} 0.5`);
  expect(drawn(across, false)).toBe(`M${a} 0.5L${d} 1.5`);
  expect(drawn(across, true)).toBe(`M0.5 ${a}L1.5 ${d}`);
  const along = courseMap([chapter(1, 'Pull'), chapter(2, 'Pull'), chapter(3, 'Pull', ['c1'])]);
  expect(along.lines[0] && drawn(along.lines[0], false)).toMatch(/^M\d\.\d+ 0\.5C.* 2\.\d+ 0\.5$/);
});

test('the frets are a neck’s: the twelfth halves the string, and fourteen are drawn to the last', () => {
  // An octave halves a string, so the thirteenth and fourteenth stand where the first and second do on the half that is left.
  const frets = fretsOf(14);
  const [first = 0, second = 0] = frets;
  const at = (n: number) => frets[n - 1] ?? 0;
  expect(frets).toHaveLength(14);
  expect(at(14)).toBe(14);
  const half = at(12);
  expect(at(13) - half).toBeCloseTo(first / 2, 2);
  expect(at(14) - half).toBeCloseTo(second / 2, 2);
  expect(frets.every((each, i) => i === 0 || each > (frets[i - 1] ?? 0))).toBe(true);
});
