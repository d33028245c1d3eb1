import { beforeAll, expect, test } from 'vitest';

import { benchBridge } from '../../src/instrument/bench-bridge.ts';
import { formatTotal } from '../../src/instrument/format.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import { dragWithFinger, dragWithMouse, pressKey, sliderValue } from './kit.ts';
import { openFigure, plain, refused, type, type OneFigure } from './one-figure.ts';

let bridge: OneFigure;
beforeAll(async () => {
  bridge = await openFigure(browser, 'what-neck-and-bridge-carry', 'the-bridge');
});

const at = async (name: string): Promise<number> =>
  (await sliderValue(bridge.handle(`bridge-${name}`))).now;
const cells = async (): Promise<string[]> =>
  (await bridge.figure.locator('td').allTextContents()).map(plain);
const verdict = async (): Promise<string> =>
  plain(await bridge.figure.locator('.verdict').textContent());

const before = physics.totalPull(pullsOf(workshopInstrument('redshank')).map((p) => p.tension));
const moment = (newtonMetres: number): string =>
  `${physics.inches(physics.poundsForce(newtonMetres)).toFixed(1)} lb·in`;

/** Both pulls and both moments about the edge, for the set and the claw as they stand. */
async function expected(): Promise<string[]> {
  const { stringArm, springArm, rate, preload, count, pitch } = benchBridge;
  const pull = await at('pull');
  const { extension } = physics.bridgeBalance({ ...benchBridge, pull: before });
  const open = extension + (await at('claw')) * pitch;
  const force = open > 0 ? count * (preload + rate * open) : 0;
  return [
    plain(formatTotal(pull, 'in-lb')),
    moment(pull * stringArm),
    plain(formatTotal(force, 'in-lb')),
    moment(force * springArm),
  ];
}

test('it stands level with the reader’s set', async () => {
  expect(await at('pull')).toBeCloseTo(before, 1);
  expect(await cells()).toEqual(await expected());
  expect(await verdict()).toMatch(/^Level/);
});

test.each([
  ['the pull with a mouse', 'pull', dragWithMouse, -30, 1],
  ['the claw with a mouse', 'claw', dragWithMouse, -12, 1],
  ['the pull with a finger', 'pull', dragWithFinger, 45, -1],
  ['the claw with a finger', 'claw', dragWithFinger, 20, -1],
] as const)('dragging %s gives the module’s moments', async (_, name, drag, x, way) => {
  const was = await at(name);
  await drag(bridge.handle(`bridge-${name}`), { x });
  expect(Math.sign((await at(name)) - was)).toBe(way);
  expect(await cells()).toEqual(await expected());
});

test('keys step the set, and so many turns level it as the module says', async () => {
  await type(bridge.field('Turns'), '0');
  await pressKey(bridge.handle('bridge-pull'), 'End');
  expect(await cells()).toEqual(await expected());
  expect(await verdict()).toContain('tips towards the neck');
  const turns = physics.turnsToLevel({ ...benchBridge, from: before, to: await at('pull') });
  expect(await verdict()).toContain(`${turns.toFixed(1)} turns`);
  await bridge.figure.getByRole('button', { name: 'Level it' }).click();
  expect(await at('claw')).toBeCloseTo(turns, 3);
  const [, strings, , springs] = await cells();
  expect(springs).toBe(strings);
  expect(await verdict()).toMatch(/^Level/);
});

test('typed turns do what a drag does; others are kept, and answered', async () => {
  await type(bridge.field('Turns'), '1.5');
  expect(await at('claw')).toBe(1.5);
  expect(await cells()).toEqual(await expected());
  expect(await refused(bridge.field('Turns'), '20')).toContain('Turns from −8 (looser) to 8');
});

test('a slot’s gauge is dragged, and the load follows', async () => {
  const nut = bridge.page.locator('#the-nut-slot');
  await nut.scrollIntoViewIfNeeded();
  await bridge.page.waitForFunction(
    () => !document.querySelector('#the-nut-slot astro-island[ssr]'),
  );
  const handle = nut.getByRole('slider');
  await dragWithFinger(handle, { x: 30 });
  const { now } = await sliderValue(handle);
  expect(now).toBeGreaterThan(10);
  const [first, ...rest] = pullsOf(workshopInstrument('redshank')).map((p) => p.tension);
  const heavier = (first ?? NaN) * (now / 10) ** 2;
  const total = plain(formatTotal(physics.totalPull([heavier, ...rest]), 'in-lb'));
  expect(plain(await nut.textContent())).toContain(`All strings together: ${total}`);
  expect(bridge.problems).toEqual([]);
});
