import { beforeAll, expect, test } from 'vitest';

import { constructionOf } from '../../src/instrument/drawer.ts';
import { formatForce } from '../../src/instrument/format.ts';
import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import { dragWithFinger, dragWithMouse, pressKey, sliderValue } from './kit.ts';
import { openFigure, plain, refused, type, type OneFigure } from './one-figure.ts';

let map: OneFigure;
beforeAll(async () => {
  map = await openFigure(browser, 'going-low', 'three-roads');
});

const at = async (name: string): Promise<number> => (await sliderValue(map.handle(name))).now;
const reading = async (): Promise<string> =>
  plain(await map.figure.locator('dd b').first().textContent());

/** The pull of the point's string at the note on the map. */
async function expected(): Promise<string> {
  const gauge = Number.parseFloat(await map.field('Gauge').inputValue());
  const tension = physics.tension({
    speakingLength: await at('point'),
    frequency: physics.noteFrequency('E2') * 2 ** (-(await at('low-note')) / 12),
    linearDensity: physics.linearDensity(constructionOf({ kind: 'wound', gauge })),
  });
  return plain(formatForce(tension, 'in-lb'));
}

test.each([
  ['the note with a mouse', 'low-note', dragWithMouse, { x: 45 }, 1],
  ['the note with a finger', 'low-note', dragWithFinger, { x: -40 }, -1],
  ['the cross with a mouse', 'point', dragWithMouse, { x: -30, y: 40 }, -1],
  ['the cross with a finger', 'point', dragWithFinger, { x: 50, y: -60 }, 1],
] as const)('dragging %s gives the module’s pull', async (_, name, drag, by, way) => {
  const before = await at(name);
  await drag(map.handle(name), by);
  expect(Math.sign((await at(name)) - before)).toBe(way);
  expect(await reading()).toBe(await expected());
});

test('dragging the cross up makes the string thicker', async () => {
  const thickness = async () => Number.parseFloat(await map.field('Gauge').inputValue());
  const before = await thickness();
  await dragWithMouse(map.handle('point'), { y: -50 });
  expect(await thickness()).toBeGreaterThan(before);
  expect(await reading()).toBe(await expected());
});

test('keys go down by semitones to the end of the map', async () => {
  await pressKey(map.handle('low-note'), 'Home');
  expect(await at('low-note')).toBe(0);
  await pressKey(map.handle('low-note'), 'ArrowRight', 2);
  expect(plain((await sliderValue(map.handle('low-note'))).text)).toContain('D2');
  expect(await reading()).toBe(await expected());
  await pressKey(map.handle('low-note'), 'End');
  expect(await at('low-note')).toBe(12);
});

test('typed values do what drags do; others are kept, and answered', async () => {
  await type(map.field('Low note'), 'C2');
  expect(await at('low-note')).toBe(4);
  await type(map.field('Length'), '27');
  await type(map.field('Gauge'), '52');
  expect(await at('point')).toBeCloseTo(physics.fromInches(27), 5);
  expect(await reading()).toBe(await expected());
  expect(await refused(map.field('Low note'), 'C4')).toMatch(/goes from E2 down to E1/);
  expect(await refused(map.field('Length'), 'long')).not.toBe('');
});

test('each road ends where the law says', async () => {
  const own = physics.fromInches(25.5);
  await type(map.field('Low note'), 'B1');
  await map.figure.getByRole('button', { name: 'Lengthen' }).click();
  expect(await at('point')).toBeCloseTo(own * 2 ** (5 / 12), 3);
  const before = plain(
    formatForce(
      physics.tension({
        speakingLength: own,
        frequency: physics.noteFrequency('E2'),
        linearDensity: physics.linearDensity(constructionOf({ kind: 'wound', gauge: 46 })),
      }),
      'in-lb',
    ),
  );
  expect(await reading()).toBe(before);
  await map.figure.getByRole('button', { name: 'Tune down' }).click();
  expect(await at('point')).toBeCloseTo(own, 5);
  expect(await reading()).toBe(await expected());
  expect(map.problems).toEqual([]);
});
