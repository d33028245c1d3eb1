import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { formatDifference, formatLength } from '../../src/instrument/format.ts';
import { drawer } from '../../src/instrument/drawer.ts';
import { encode } from '../../src/instrument/link.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { sets } from '../../src/instrument/sets.ts';
import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import {
  comeTo,
  desktop,
  dragWithFinger,
  dragWithMouse,
  open,
  phone,
  pressKey,
  sliderValue,
} from './kit.ts';

async function chapter({ viewport = phone, link = '' } = {}) {
  const address = `${inject('origin')}course/two-guitars-one-feel/${link}`;
  const visit = await open(browser, address, { viewport });
  await comeTo(visit.page, '#two-necks', '#rule-map');
  return visit;
}

const handle = (page: Page, side: 'mine' | 'other') => page.locator(`[data-handle="${side}"]`);
const told = (page: Page): Promise<string[]> => page.locator('.told .difference').allTextContents();
const chosen = (page: Page) => page.locator('td[tabindex="0"]');
const title = (page: Page) => page.locator('.chosen .title').textContent();

const scale = (inches: number): string => formatLength(physics.fromInches(inches), 'in-lb');

const redshank = workshopInstrument('redshank');

/** What the plot must letter, string by string: the old set left on, and the nearest gauge of its kind. */
const expected = (mine: number, other: number): string[] =>
  pullsOf({ ...redshank, scale: { treble: mine, bass: mine } }).map((own) => {
    const there = { speakingLength: other, frequency: own.frequency };
    const left = physics.tension({ ...there, linearDensity: own.linearDensity });
    const kind = own.construction.kind;
    const best = physics.nearestConstruction({ ...there, tension: own.tension, drawer, kind });
    return `${formatDifference(left / own.tension - 1)} → ${formatDifference(best?.residual ?? NaN)}`;
  });

test.each([
  ['a mouse', desktop, dragWithMouse, 'other'],
  ['a mouse', desktop, dragWithMouse, 'mine'],
  ['a finger', phone, dragWithFinger, 'other'],
  ['a finger', phone, dragWithFinger, 'mine'],
] as const)('dragging with %s gives the module’s picks', async (_, viewport, drag, side) => {
  const { page, problems, close } = await chapter({ viewport });
  const before = await sliderValue(handle(page, side));
  await handle(page, side).scrollIntoViewIfNeeded();
  await drag(handle(page, side), { x: 24 });
  const mine = (await sliderValue(handle(page, 'mine'))).now;
  const other = (await sliderValue(handle(page, 'other'))).now;
  expect(side === 'mine' ? mine : other).toBeGreaterThan(before.now);
  expect(await told(page)).toEqual(expected(mine, other));
  expect(problems).toEqual([]);
  await close();
});

test('keys move a saddle by quarters, sixteenths and inches, and to the ends of the sheet', async () => {
  const { page, close } = await chapter();
  const saddle = handle(page, 'other');
  const start = (await sliderValue(saddle)).now;
  const after = async (key: string): Promise<number> => {
    await pressKey(saddle, key);
    return physics.inches((await sliderValue(saddle)).now - start);
  };
  expect(await after('ArrowRight')).toBeCloseTo(0.25, 4);
  expect(await after('Shift+ArrowRight')).toBeCloseTo(0.3125, 4);
  expect(await after('PageDown')).toBeCloseTo(-0.6875, 4);
  const shorter = (await sliderValue(saddle)).now;
  expect(await told(page)).toEqual(expected(redshank.scale.treble, shorter));
  await pressKey(saddle, 'Home');
  const { now, min } = await sliderValue(saddle);
  expect(now).toBe(min);
  await close();
});

test('a typed length does what a drag does, and both can be put back', async () => {
  const { page, close } = await chapter();
  const before = await told(page);
  const field = page
    .getByLabel('Scale length, to be strung', { exact: true })
    .and(page.locator('input'));
  await field.fill('27');
  await field.press('Enter');
  expect(await told(page)).toEqual(expected(redshank.scale.treble, physics.fromInches(27)));
  await page.getByRole('button', { name: 'Put both back' }).click();
  expect(await told(page)).toEqual(before);
  // The bar in thumb's reach has one more.
  await page.getByRole('button', { name: 'Undo' }).first().click();
  expect(await told(page)).toEqual(expected(redshank.scale.treble, physics.fromInches(27)));
  await close();
});

test('a string past its strength is drawn broken and has no number', async () => {
  const mine = workshopInstrument('lapwing');
  const length = physics.fromInches(31);
  const other = { ...asTarget(mine), scale: { treble: length, bass: length } };
  const { page, close } = await chapter({ link: `#${encode({ ...initialState, mine, other })}` });
  expect((await told(page))[4]).toBe('breaks → none');
  expect(await page.locator('.remarks').textContent()).toContain('G4: nothing in the drawer');
  await close();
});

test('the map letters the mean that the module gives, and the strip each string', async () => {
  const { page, close } = await chapter({ viewport: desktop });
  const set = sets.find((s) => s.name === 'nine-and-a-halfs');
  const residuals = pullsOf(redshank).map((own, i) => {
    const construction = set?.constructions[i] ?? own.construction;
    const speakingLength = own.speakingLength + physics.fromInches(1);
    const linearDensity = physics.linearDensity(construction);
    const tension = physics.tension({ speakingLength, frequency: own.frequency, linearDensity });
    return tension / own.tension - 1;
  });
  const mean = residuals.reduce((sum, r) => sum + r, 0) / residuals.length;
  expect(await title(page)).toBe('Nine-and-a-halfs on 26.5\u00a0in');
  expect((await chosen(page).textContent())?.trim()).toBe(
    `\u2212${Math.abs(Math.round(100 * mean))}`,
  );
  const strip = await page.locator('.strip .numbers li').allTextContents();
  expect(strip.map((text) => text.trim())).toEqual(residuals.map(formatDifference));
  await close();
});

test.each([
  ['desk', desktop, 27],
  ['phone', phone, 27.5],
])('the map is walked by keys on a %s, and taken by a tap', async (_, viewport, next) => {
  const { page, problems, close } = await chapter({ viewport });
  await chosen(page).focus();
  await page.keyboard.press('ArrowRight');
  expect(await title(page)).toBe(`Nine-and-a-halfs on ${scale(next)}`);
  await page.keyboard.press('ArrowUp');
  expect(await title(page)).toBe(`Nines on ${scale(next)}`);
  expect(await page.locator('td[aria-selected="true"]').count()).toBe(1);
  const home = page
    .locator('tr', { has: page.locator('th.own') })
    .last()
    .locator('td:visible');
  await home.first().tap();
  expect(await title(page)).toContain('Tens on 21.5');
  expect(problems).toEqual([]);
  await close();
});

test('a rule of the reader’s own is drawn by hand, and the guitar walks along it', async () => {
  const { page, problems, close } = await chapter();
  const at = (name: string) => page.locator(`[data-handle="${name}"]:visible`);
  expect(await page.locator('[data-part="rule-inch"]').first().isVisible()).toBe(false);
  await at('rule').scrollIntoViewIfNeeded();
  await dragWithFinger(at('rule'), { x: -70 });
  const { now } = await sliderValue(at('rule'));
  expect(now).toBeGreaterThan(0.7);
  expect(await page.locator('.ruled').textContent()).toContain(
    `half a step for ${formatLength(physics.fromInches(now), 'in-lb')}`,
  );
  // The trade’s own comes with it.
  expect(await page.locator('svg.narrow [data-part="rule-inch"]').isVisible()).toBe(true);
  await pressKey(at('rule'), 'Home');
  await pressKey(at('rule'), 'PageUp');
  // Half a step for an inch: two inches more, nines.
  await pressKey(at('walk'), 'ArrowRight');
  expect(await title(page)).toBe(`Nines on ${scale(27.5)}`);
  await pressKey(at('walk'), 'ArrowRight');
  expect(await title(page)).toBe(`Eight-and-a-halfs on ${scale(28.5)}`);
  expect(problems).toEqual([]);
  await close();
});

test('an instrument with other strings is compared with its twin, and says so', async () => {
  const { page, close } = await chapter({
    link: `#${encode({ ...initialState, mine: workshopInstrument('godwit') })}`,
  });
  expect(await page.locator('.told li').count()).toBe(4);
  expect(await page.getByText('here Godwit is compared with a longer twin').count()).toBe(1);
  await pressKey(handle(page, 'other'), 'ArrowRight');
  expect((await sliderValue(handle(page, 'other'))).text).toContain('35.25');
  // Its scale is tried; it is a twin all the same.
  expect(await page.getByText('here Godwit is compared with a longer twin').count()).toBe(1);
  await close();
});

test('on the whole screen a room sees all of the rows, and the band hatched', async () => {
  const size = { width: 1280, height: 720 };
  const { page, problems, close } = await chapter({ viewport: size });
  for (const [id, row] of [
    ['#two-necks', '.told li'],
    ['#rule-map', '.map tbody tr'],
  ] as const) {
    const figure = page.locator(id);
    await figure.getByRole('button', { name: /^Share or keep/ }).click();
    await figure.getByRole('button', { name: 'Fill the screen' }).click();
    await figure.getByRole('group', { name: 'On the whole screen' }).waitFor();
    const { y = NaN, height = NaN } = (await figure.locator(row).last().boundingBox()) ?? {};
    expect(y + height, id).toBeLessThanOrEqual(size.height);
    const band = figure.locator('svg .felt').first();
    expect(await band.evaluate((each) => getComputedStyle(each).fill), id).toContain('url(');
    await page.keyboard.press('Escape');
    await figure.getByRole('button', { name: 'Copy a link' }).waitFor();
    expect(await page.locator('[data-hatched], [data-hatch]').count(), id).toBe(0);
    await page.keyboard.press('Escape');
  }
  expect(problems).toEqual([]);
  await close();
});
