import { expect, test } from 'vitest';

import { drawer } from '../../src/instrument/drawer.ts';
import { formatDifference, formatForce, letteredDensity } from '../../src/instrument/format.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { pressKey, sliderValue } from './kit.ts';
import { chapterOnce, drags, toldBy, refused, typed } from './one-chapter.ts';

const page = chapterOnce('gauge-and-mass');
const caliper = () => page().locator('#the-caliper');
const jaw = () => caliper().locator('[data-handle="jaw"]');
const stairs = () => page().locator('#the-stairs');
const wanted = () => stairs().locator('[data-handle="wanted"]');

/** What the caliper letters of a steel wire of so many thousandths. */
function wire(thousandths: number): string[] {
  const diameter = physics.fromThousandths(thousandths);
  const density = physics.linearDensity({ kind: 'plain', diameter, material: 'musicWire' });
  return [
    `${(thousandths / 1000).toFixed(4)}\u00a0in`,
    `${(0.25 * Math.PI * diameter ** 2 * 1e6).toPrecision(3)}\u00a0mm²`,
    letteredDensity(density),
  ];
}

test.each(drags)('the jaw dragged with %s weighs the wire as the module does', async (_, drag) => {
  await typed(caliper(), 'Diameter', '10');
  await drag(jaw(), { x: 36 });
  const { now } = await sliderValue(jaw());
  expect(now).toBeGreaterThan(10.5);
  expect(await toldBy(caliper())).toEqual(expect.arrayContaining(wire(now)));
});

test('keys and the field open the jaws; beyond them an answer stands at the field', async () => {
  await typed(caliper(), 'Diameter', '0.3 mm');
  const { now } = await sliderValue(jaw());
  expect(now).toBeCloseTo(physics.thousandths(0.0003), 4);
  expect(await toldBy(caliper())).toEqual(expect.arrayContaining(wire(now)));
  await typed(caliper(), 'Diameter', '10');
  await pressKey(jaw(), 'PageUp');
  await pressKey(jaw(), 'Shift+ArrowLeft');
  expect(await toldBy(caliper())).toEqual(expect.arrayContaining(wire(11.9)));
  await refused(caliper(), 'Diameter', '17', /from 6 to 16 thousandths/);
});

const [string] = pullsOf(workshopInstrument('redshank'));
if (!string) throw new Error('The workshop’s first instrument has no strings.');

/** Where the foot must stand for a wanted share of the string's own pull. */
function nearest(share: number): string[] {
  const tension = share * string!.tension;
  const { speakingLength, frequency } = string!;
  const asked = { speakingLength, frequency, tension, drawer, kind: 'plain' } as const;
  const step = physics.nearestConstruction(asked);
  if (!step) throw new Error('Nothing in the drawer holds the note.');
  return [
    `${formatForce(tension, 'in-lb')} wanted`,
    `${Number(physics.thousandths(step.construction.diameter).toFixed(2))}, ${formatForce(step.tension, 'in-lb')}`,
    formatDifference(step.residual),
  ];
}

test.each(drags)('the wanted pull dragged with %s goes to the nearest gauge', async (_, drag) => {
  await typed(stairs(), 'Wanted pull', '16.3 lb');
  await drag(wanted(), { y: -40 });
  const { now } = await sliderValue(wanted());
  expect(now).toBeGreaterThan(1.05);
  expect(await toldBy(stairs())).toEqual(expect.arrayContaining(nearest(now)));
});

test('keys and the field climb the stairs, and the way back leads to the own gauge', async () => {
  await typed(stairs(), 'Wanted pull', '14 lb');
  const { now } = await sliderValue(wanted());
  expect(now).toBeCloseTo(physics.fromPoundsForce(14) / string.tension, 6);
  expect(await toldBy(stairs())).toEqual(expect.arrayContaining(nearest(now)));
  await pressKey(wanted(), 'End');
  expect(await toldBy(stairs())).toEqual(expect.arrayContaining(nearest(1.3)));
  await stairs().getByRole('button', { name: 'Back to 10' }).click();
  expect(await toldBy(stairs())).toEqual(expect.arrayContaining(nearest(1)));
  await refused(stairs(), 'Wanted pull', '40 lb', /from 11\.4.lb to 21\.2.lb/);
});
