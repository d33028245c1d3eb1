import { beforeAll, expect, test } from 'vitest';

import { constructionOf } from '../../src/instrument/drawer.ts';
import { formatShare } from '../../src/instrument/format.ts';
import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import { dragWithFinger, dragWithMouse, lookUp, pressKey, sliderValue } from './kit.ts';
import { openFigure, plain, refused, type, type OneFigure } from './one-figure.ts';

let cliff: OneFigure;
beforeAll(async () => {
  cliff = await openFigure(browser, 'when-strings-break', 'the-cliff');
});

const at = async (name: string): Promise<number> =>
  (await sliderValue(cliff.handle(`cliff-${name}`))).now;
const cells = async (): Promise<string[]> =>
  (await cliff.figure.locator('td').allTextContents()).map(plain);

const ten = constructionOf({ kind: 'plain', gauge: 10 });
const signed = (semitones: number): string =>
  `${semitones < 0 ? '−' : '+'}${Math.abs(semitones).toFixed(1)}`;

/** Its stress over its strength, and the semitones to 65 % and to all of it. */
async function expected(): Promise<string[]> {
  const speakingLength = await at('length');
  const frequency = physics.noteFrequency(physics.noteName(await at('note')));
  const tension = physics.tension({
    speakingLength,
    frequency,
    linearDensity: physics.linearDensity(ten),
  });
  const share = physics.strengthShare({ construction: ten, tension }) ?? NaN;
  if (share > 1) return ['breaks', '–', '–'];
  const edge = physics.highestFrequency({ construction: ten, speakingLength, share: 1 })?.high;
  const left = 12 * Math.log2((edge ?? NaN) / frequency);
  return [
    formatShare(share).replace(/\s/g, ' '),
    signed(left + 6 * Math.log2(physics.CAUTION_SHARE)),
    signed(left),
  ];
}

test.each([
  ['the length with a mouse', 'length', dragWithMouse, { x: 30 }, 1],
  ['the length with a finger', 'length', dragWithFinger, { x: -50 }, -1],
  ['the note with a mouse', 'note', dragWithMouse, { y: -30 }, 1],
  ['the note with a finger', 'note', dragWithFinger, { y: 70 }, -1],
] as const)('dragging %s gives the module’s margin', async (_, name, drag, by, way) => {
  const before = await at(name);
  await drag(cliff.handle(`cliff-${name}`), by);
  expect(Math.sign((await at(name)) - before)).toBe(way);
  expect(await cells()).toEqual(await expected());
});

test('the dot is dragged both ways at once', async () => {
  const [length, note] = [await at('length'), await at('note')];
  await dragWithFinger(cliff.figure.locator('.grip:visible'), { x: 40, y: -40 });
  expect(await at('length')).toBeGreaterThan(length);
  expect(await at('note')).toBeGreaterThan(note);
  expect(await cells()).toEqual(await expected());
});

test('keys go by semitones, and past the edge the string is drawn broken', async () => {
  await type(cliff.field('Length'), '25.5');
  await type(cliff.field('Pitch'), 'E4');
  await pressKey(cliff.handle('cliff-note'), 'ArrowUp', 3);
  expect(await cliff.field('Pitch').inputValue()).toBe('G4');
  expect(await cells()).toEqual(await expected());
  await pressKey(cliff.handle('cliff-note'), 'End');
  expect(await cells()).toEqual(['breaks', '–', '–']);
  expect(await cliff.figure.locator('.broken .snapped:visible').count()).toBe(1);
});

test('typed values do what drags do; others are kept, and answered', async () => {
  await type(cliff.field('Pitch'), 'F4');
  await type(cliff.field('Length'), '24 in');
  expect(await at('length')).toBeCloseTo(physics.fromInches(24), 5);
  expect(await cells()).toEqual(await expected());
  expect(await refused(cliff.field('Length'), '80 in')).toMatch(/goes from .* to /);
  expect(await refused(cliff.field('Pitch'), 'high')).not.toBe('');
  await cliff.figure.getByRole('button', { name: /^Back to/ }).click();
  expect(await cliff.field('Pitch').inputValue()).toBe('E4');
});

test('every plain pail fills alike, to the share that the module gives', async () => {
  await lookUp(cliff.page);
  const pails = cliff.page.locator('#the-buckets');
  await pails.scrollIntoViewIfNeeded();
  await cliff.page.waitForFunction(() => !document.querySelector('#the-buckets astro-island[ssr]'));
  await dragWithFinger(pails.getByRole('slider'), { y: 40 });
  const note = await pails.getByRole('textbox', { name: 'Note of all buckets' }).inputValue();
  const frequency = physics.noteFrequency(note.replace('♯', '#'));
  expect(frequency).toBeLessThan(physics.noteFrequency('E4'));
  const pounds = [9, 11, 13, 17, 20].map((gauge) => {
    const linearDensity = physics.linearDensity(constructionOf({ kind: 'plain', gauge }));
    const speakingLength = physics.fromInches(25.5);
    return physics.poundsForce(physics.tension({ speakingLength, frequency, linearDensity }));
  });
  const shown = (await pails.locator('svg text').allTextContents()).map(plain);
  for (const value of pounds) expect(shown).toContain(String(Number(value.toPrecision(3))));
  expect(cliff.problems).toEqual([]);
});
