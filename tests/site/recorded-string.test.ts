/** The recorded string beside the model: what a reader changes moves the model alone, and says so. */
import { beforeAll, expect, test } from 'vitest';

import { browser } from './browser.ts';
import { dragWithFinger, dragWithMouse, pressKey, sliderValue } from './kit.ts';
import { openFigure, plain, refused, type, type OneFigure } from './one-figure.ts';

let recorded: OneFigure;
beforeAll(async () => {
  recorded = await openFigure(browser, 'stiff-strings', 'recorded-string');
});

const wire = () => sliderValue(recorded.handle('wire'));
const rungs = (part: string) =>
  recorded.figure.locator(`[data-part="recorded-${part}"]`).first().getAttribute('d');

test.each([
  ['a mouse', dragWithMouse, -12, -1],
  ['a finger', dragWithFinger, 12, 1],
] as const)(
  'dragging the gauge with %s moves the model’s rungs and not the measured ones',
  async (_, drag, x, way) => {
    const [before, model, measured] = [
      (await wire()).now,
      await rungs('model'),
      await rungs('measured'),
    ];
    await drag(recorded.handle('wire'), { x });
    expect(Math.sign((await wire()).now - before)).toBe(way);
    expect(await rungs('model')).not.toBe(model);
    expect(await rungs('measured')).toBe(measured);
  },
);

test('keys go by half a thousandth, and to the ends', async () => {
  await pressKey(recorded.handle('wire'), 'Home');
  expect((await wire()).now).toBe(8);
  await pressKey(recorded.handle('wire'), 'ArrowRight', 2);
  expect(plain((await wire()).text)).toMatch(/^9 thousandths, B \d+\.\d millionths$/);
});

test('a typed gauge is taken, and a wrong one answered', async () => {
  await type(recorded.field('Gauge'), '12');
  expect((await wire()).now).toBe(12);
  expect(await refused(recorded.field('Gauge'), '40')).toBe('From 8 to 14 here.');
  expect((await wire()).now).toBe(12);
});

test('each fret shows its own note’s partials', async () => {
  const shown = new Set<string | null>();
  for (const name of ['fret 5, A 4', 'fret 7, B 4', 'fret 12, E 5', 'open, E 4']) {
    await recorded.figure.getByLabel(name, { exact: true }).click();
    shown.add(await rungs('measured'));
  }
  expect(shown.size).toBe(4);
});

test('nothing went wrong meanwhile', () => {
  expect(recorded.problems).toEqual([]);
});
