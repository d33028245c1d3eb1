import { beforeAll, expect, test } from 'vitest';

import { NUT_HEIGHT } from '../../src/instrument/action.ts';
import { usualHeight } from '../../src/instrument/intoned.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import { dragWithFinger, dragWithMouse, pressKey, sliderValue } from './kit.ts';
import { openFigure, plain, refused, type, type OneFigure } from './one-figure.ts';

let flags: OneFigure;
beforeAll(async () => {
  flags = await openFigure(browser, 'in-tune-up-the-neck', 'the-flags');
});

const setback = async (): Promise<number> => (await sliderValue(flags.handle('setback'))).now;
const together = async (): Promise<string> =>
  plain(await flags.figure.locator('.whole td').textContent());

const redshank = workshopInstrument('redshank');
const [string] = pullsOf(redshank);
if (!string) throw new Error('Redshank has no strings');
const about = (height: number) => ({
  scaleLength: string.speakingLength,
  nutHeight: NUT_HEIGHT,
  saddleHeight: 2 * height - NUT_HEIGHT,
  response: physics.responseOf(string),
});
const signed = (cents: number): string => {
  const digits = Math.abs(cents).toFixed(1);
  return digits === '0.0' ? digits : `${cents < 0 ? '−' : '+'}${digits}`;
};
/** Cents off at a fret, with the saddle where it stands. */
const expected = async (fret = 12, height = usualHeight(redshank)): Promise<string> =>
  signed(physics.fretError({ ...about(height), saddleSetback: await setback(), fret }).total);

test.each([
  ['a mouse', dragWithMouse, 22, 1],
  ['a finger', dragWithFinger, -12, -1],
])('dragging the saddle with %s gives the module’s cents', async (_, drag, x, way) => {
  const before = await setback();
  await drag(flags.handle('setback'), { x });
  expect(Math.sign((await setback()) - before)).toBe(way);
  expect(await together()).toBe(await expected());
  const told = await flags.figure.locator('text.cents:visible').allTextContents();
  for (const [i, fret] of [1, 4, 7, 12].entries())
    expect(told[i], `fret ${fret}`).toBe(await expected(fret));
});

test('keys move it by tenths of a millimetre, to the ends of the drawing', async () => {
  await flags.figure.getByRole('button', { name: 'To the scale length' }).click();
  expect(await setback()).toBe(0);
  expect(await together()).toBe(await expected());
  await pressKey(flags.handle('setback'), 'ArrowRight', 4);
  expect(await setback()).toBeCloseTo(4e-4, 8);
  expect(await together()).toBe(await expected());
  await pressKey(flags.handle('setback'), 'End');
  const { now, max } = await sliderValue(flags.handle('setback'));
  expect(now).toBe(max);
  expect(await together()).toBe(await expected());
});

test('no flag leaves the board, wherever the saddle stands', async () => {
  for (const key of ['Home', 'End']) {
    await pressKey(flags.handle('setback'), key);
    const sizes = await flags.figure.locator('[data-part="flags"]:visible').evaluate((path) => {
      const board = path.closest('svg')?.querySelector('rect.board')?.getBoundingClientRect();
      const { top, bottom } = path.getBoundingClientRect();
      return { above: (board?.top ?? NaN) - top, below: bottom - (board?.bottom ?? NaN) };
    });
    expect(sizes.above).toBeLessThan(0.5);
    expect(sizes.below).toBeLessThan(0.5);
  }
});

test('typed places do what a drag does; others are kept, and answered', async () => {
  await type(flags.field('Saddle back by'), '1 mm');
  expect(await setback()).toBeCloseTo(0.001, 6);
  expect(await together()).toBe(await expected());
  await type(flags.field('Height over the 12th fret'), '2.5 mm');
  expect(await together()).toBe(await expected(12, 0.0025));
  expect(await refused(flags.field('Saddle back by'), '9 in')).toMatch(/^From .* to /);
  expect(await refused(flags.field('Height over the 12th fret'), 'low')).not.toBe('');
});

test('the best place is the module’s', async () => {
  await flags.figure.getByRole('button', { name: 'To the best place' }).click();
  const best = physics.compensate({ ...about(0.0025), nut: 'kept' });
  expect(await setback()).toBeCloseTo(best.saddleSetback, 6);
  expect(await together()).toBe(await expected(12, 0.0025));
  expect(flags.problems).toEqual([]);
});
