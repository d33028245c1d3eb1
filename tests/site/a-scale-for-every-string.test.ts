import { beforeAll, expect, test } from 'vitest';

import { constructionOf } from '../../src/instrument/drawer.ts';
import { forceNumber } from '../../src/instrument/format.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import { dragWithFinger, dragWithMouse, pressKey, sliderValue } from './kit.ts';
import { openFigure, plain, refused, type, type OneFigure } from './one-figure.ts';

let board: OneFigure;
beforeAll(async () => {
  board = await openFigure(browser, 'a-scale-for-every-string', 'draw-the-board');
});

const at = async (side: string): Promise<number> =>
  (await sliderValue(board.handle(`board-${side}`))).now;
const weights = (): Promise<string[]> =>
  board.figure.locator('text.pull:visible').allTextContents();
const ends = async (): Promise<string[]> =>
  (await board.figure.locator('.ends b').allTextContents()).map(plain);

const { strings } = workshopInstrument('redshank');

/** Every string's own length, and the pull that it has there. */
async function expected(): Promise<string[]> {
  const [treble, bass] = [await at('treble'), await at('bass')];
  return strings.map(({ note, ...gauge }, k) => {
    const tension = physics.tension({
      speakingLength: treble + (k / (strings.length - 1)) * (bass - treble),
      frequency: physics.noteFrequency(note),
      linearDensity: physics.linearDensity(constructionOf(gauge)),
    });
    return forceNumber(tension, 'in-lb');
  });
}

test.each([
  ['bass', 'a mouse', dragWithMouse, 18, 1],
  ['bass', 'a finger', dragWithFinger, -10, -1],
  ['treble', 'a mouse', dragWithMouse, -12, -1],
  ['treble', 'a finger', dragWithFinger, 16, 1],
] as const)(
  'dragging the %s side with %s gives the module’s pulls',
  async (side, _, drag, y, way) => {
    const before = await at(side);
    await drag(board.handle(`board-${side}`), { y });
    expect(Math.sign((await at(side)) - before)).toBe(way);
    expect(await weights()).toEqual(await expected());
  },
);

test('the square fret shares out the slant and moves no weight', async () => {
  const before = await weights();
  const slant = async (): Promise<number> => {
    const [treble, bass] = [await at('treble'), await at('bass')];
    return physics.inches((1 - 2 ** (-(await at('square')) / 12)) * Math.abs(bass - treble));
  };
  await dragWithFinger(board.handle('board-square'), { y: 40 });
  expect(await at('square')).toBeGreaterThan(7);
  expect(await weights()).toEqual(before);
  expect(Number.parseFloat((await ends())[0] ?? '')).toBeCloseTo(await slant(), 1);
  await pressKey(board.handle('board-square'), 'Home');
  expect(await at('square')).toBe(0);
  expect((await ends())[0]).toContain('square');
  expect(await weights()).toEqual(before);
});

test('keys move a side, and typed lengths do what drags do', async () => {
  const before = await at('bass');
  await pressKey(board.handle('board-bass'), 'ArrowRight');
  expect(physics.inches((await at('bass')) - before)).toBeCloseTo(0.25, 2);
  await type(board.field('Bass side'), '28');
  await type(board.field('Treble side'), '25');
  await type(board.field('Square at fret'), '9');
  expect(await at('bass')).toBeCloseTo(physics.fromInches(28), 5);
  expect(await at('square')).toBe(9);
  expect(await weights()).toEqual(await expected());
});

test('what can’t be read is kept, and answered', async () => {
  expect(await refused(board.field('Bass side'), 'long')).not.toBe('');
  expect(await refused(board.field('Treble side'), '90')).toMatch(/^Scale lengths from/);
  expect(await refused(board.field('Square at fret'), '40')).toMatch(/^A whole fret from 0/);
});

test('made parallel, all strings are as long as the treble side; back gives the first board', async () => {
  await board.figure.getByRole('button', { name: 'Make it parallel' }).click();
  expect(await at('bass')).toBe(await at('treble'));
  expect(await weights()).toEqual(await expected());
  await board.figure.getByRole('button', { name: 'Back', exact: true }).click();
  expect(await at('bass')).toBeCloseTo(physics.fromInches(27), 5);
  expect(board.problems).toEqual([]);
});
