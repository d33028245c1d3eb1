/** What every chapter is made of, read from its text. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const folder = join(import.meta.dirname, '../../content/course');
const chapters = readdirSync(folder).filter((file) => file.endsWith('.mdx'));

/** The text below the front matter. */
const bodyOf = (file: string): string =>
  readFileSync(join(folder, file), 'utf8').split(/^---$/m).slice(2).join('---');
/** Opening tags whose name the pattern matches whole. */
const tags = (body: string, name: string): RegExpMatchArray[] => [
  ...body.matchAll(new RegExp(`<(${name})(?=[\\s/>])`, 'g')),
];
const wordsOf = (body: string): number =>
  body
    .replace(/<Eq[^>]*?\/>/gs, '')
    .replace(/<[^>]*>/g, ' ')
    .split(/\s+/)
    .filter(Boolean).length;

test('the course has fourteen chapters, numbered in their order', () => {
  const numbers = chapters.map((file) =>
    Number(/^number: (\d+)$/m.exec(readFileSync(join(folder, file), 'utf8'))?.[1]),
  );
  expect(numbers).toEqual(Array.from({ length: 14 }, (_, i) => i + 1));
});

describe.each(chapters)('%s', (file) => {
  const body = bodyOf(file);

  test('asks for a guess before any equation', () => {
    const [guess] = tags(body, 'Guess');
    expect(guess).toBeDefined();
    expect(guess?.index).toBeLessThan(tags(body, 'Eq')[0]?.index ?? Infinity);
  });

  test('is neither a leaflet nor a book', () => {
    expect(wordsOf(body)).toBeGreaterThanOrEqual(900);
    expect(wordsOf(body)).toBeLessThanOrEqual(1800);
  });

  test('says honestly how long it takes, exercises included', () => {
    // 150 words a minute of prose with numbers in it, a minute and a half for a figure, half a minute for a step of the
    // derivation, three minutes for an exercise.
    const figures = readFileSync(join(folder, '../../src/pages/course/_components.ts'), 'utf8')
      .match(/(?<=figures\/)[A-Z]\w+(?=\.astro)/g)
      ?.filter((name) => !/^(Drag[A-Z]|SetAt|FretsMeet|StringElement)/.test(name));
    const honest =
      wordsOf(body) / 150 +
      1.5 * tags(body, (figures ?? []).join('|')).length +
      0.5 * tags(body, 'Step').length +
      3 * tags(body, 'Numeric|Choose|Order|FindMistake').length;
    const said = Number(/^minutes: (\d+)$/m.exec(readFileSync(join(folder, file), 'utf8'))?.[1]);
    expect(Math.abs(said - honest), `${said} said, ${honest.toFixed(0)} counted`).toBeLessThan(5);
  });

  test('ends on the next complaint and its door, before the exercises', () => {
    const [door] = tags(body, 'Door');
    expect(door?.index).toBeLessThan(body.indexOf('## Exercises'));
    expect(tags(body, 'Door')).toHaveLength(1);
  });

  test('has numbers to drag, words that point, words explained and sources', () => {
    for (const name of ['Drag\\w+', 'PointsTo', 'Term', 'Cite', 'SideNote'])
      expect(tags(body, name).length, name).toBeGreaterThan(0);
  });

  test('has one derivation, a passage for the bench and a note for teachers', () => {
    for (const name of ['Derivation', 'BenchNote', 'Teacher'])
      expect(tags(body, name), name).toHaveLength(1);
    expect(tags(body, 'Step').length).toBeGreaterThan(2);
    expect(body.match(/<Step [^>]*why="/g)?.length).toBeGreaterThan(2);
  });

  test('has four or more exercises of three or more kinds, each with a worked solution', () => {
    const exercises = tags(body, 'Numeric|Choose|Order|FindMistake');
    expect(exercises.length).toBeGreaterThanOrEqual(4);
    expect(new Set(exercises.map(([, kind]) => kind)).size).toBeGreaterThanOrEqual(3);
    expect(body.match(/slot="solution"/g)).toHaveLength(exercises.length);
  });
});
