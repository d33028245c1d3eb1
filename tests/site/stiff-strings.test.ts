import { beforeAll, expect, test } from 'vitest';

import { constructionOf } from '../../src/instrument/drawer.ts';
import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import { dragWithFinger, dragWithMouse, pressKey, sliderValue } from './kit.ts';
import { openFigure, plain, refused, type, type OneFigure } from './one-figure.ts';

let ladder: OneFigure;
beforeAll(async () => {
  ladder = await openFigure(browser, 'stiff-strings', 'ladder');
});

const at = async (name: string): Promise<number> => (await sliderValue(ladder.handle(name))).now;
const lens = async (): Promise<string> => plain((await sliderValue(ladder.handle('partial'))).text);

async function strung() {
  const construction = constructionOf({ kind: 'plain', gauge: await at('gauge') });
  const speakingLength = await at('length');
  const linearDensity = physics.linearDensity(construction);
  const frequency = physics.noteFrequency('E4');
  const tension = physics.tension({ speakingLength, frequency, linearDensity });
  const bendingStiffness = physics.bendingStiffness(construction);
  return { speakingLength, tension, bendingStiffness };
}

/** What the lens must say: f_n = n f √(1 + B n²), in cents above n f. */
async function expected(): Promise<string> {
  const partial = await at('partial');
  const b = physics.inharmonicity(await strung());
  const cents = 600 * Math.log2(1 + b * partial ** 2);
  return `${partial}, ${cents.toFixed(cents < 9.95 ? 1 : 0)} cents high`;
}

test.each([
  ['the length with a mouse', 'length', dragWithMouse, { x: -60 }, -1],
  ['the length with a finger', 'length', dragWithFinger, { x: 25 }, 1],
  ['the gauge with a mouse', 'gauge', dragWithMouse, { x: 24 }, 1],
  ['the gauge with a finger', 'gauge', dragWithFinger, { x: -12 }, -1],
  ['the partial with a finger', 'partial', dragWithFinger, { y: -60 }, 1],
] as const)('dragging %s gives the module’s drift', async (_, name, drag, by, way) => {
  const before = await at(name);
  await drag(ladder.handle(name), by);
  expect(Math.sign((await at(name)) - before)).toBe(way);
  expect(await lens()).toBe(await expected());
});

test('keys walk the partials, up to the ends of the comb', async () => {
  await pressKey(ladder.handle('partial'), 'Home');
  expect(await at('partial')).toBe(1);
  await pressKey(ladder.handle('partial'), 'ArrowUp', 3);
  await pressKey(ladder.handle('partial'), 'PageUp');
  expect(await lens()).toBe(await expected());
  expect(await at('partial')).toBe(8);
});

test('typed values do what drags do; others are kept, and answered', async () => {
  await type(ladder.field('Length'), '20 in');
  await type(ladder.field('Gauge'), '15');
  await type(ladder.field('Partial'), '20');
  expect(await at('length')).toBeCloseTo(physics.fromInches(20), 5);
  expect(await lens()).toBe(await expected());
  expect(await refused(ladder.field('Length'), '90 in')).toMatch(/goes from .* to /);
  expect(await refused(ladder.field('Gauge'), 'thick')).not.toBe('');
  await ladder.figure.getByRole('button', { name: /^Back to/ }).click();
  expect(await at('length')).toBeCloseTo(physics.fromInches(25.5), 5);
});

test('the curve at the saddle has the length √(EI/T)', async () => {
  const curve = ladder.page.locator('#saddle-curve');
  await curve.scrollIntoViewIfNeeded();
  await ladder.page.waitForFunction(
    () => !document.querySelector('#saddle-curve astro-island[ssr]'),
  );
  const handle = curve.locator('[data-handle="gauge"]');
  await dragWithFinger(handle, { x: 20 });
  const { now } = await sliderValue(handle);
  expect(now).toBeGreaterThan(10);
  const construction = constructionOf({ kind: 'plain', gauge: now });
  const tension = physics.tension({
    speakingLength: physics.fromInches(25.5),
    frequency: physics.noteFrequency('E4'),
    linearDensity: physics.linearDensity(construction),
  });
  const end = Math.sqrt(physics.bendingStiffness(construction) / tension);
  expect(plain(await curve.locator('.words .value').textContent())).toBe(
    `${physics.inches(end).toFixed(3)} in`,
  );
  expect(ladder.problems).toEqual([]);
});
