import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import {
  desktop,
  dragWithFinger,
  dragWithMouse,
  open,
  phone,
  pressKey,
  sliderValue,
} from './kit.ts';

const handleOf = (page: Page) => page.locator('[data-handle="length"]');
const firstWeight = async (page: Page): Promise<number> =>
  Number(await page.locator('.stage text.pull').first().textContent());

/** Pull in pounds of a plain string of `gauge` thousandths, as the module gives it. */
const pounds = (gauge: number, note: string, speakingLength: number): number =>
  physics.poundsForce(
    physics.tension({
      speakingLength,
      frequency: physics.noteFrequency(note),
      linearDensity: physics.linearDensity({
        kind: 'plain',
        diameter: physics.fromThousandths(gauge),
        material: 'musicWire',
      }),
    }),
  );

/** The page proposes an inch more than the 25.5 in of the workshop's first instrument. */
const proposed = physics.fromInches(26.5);

test('an inch more is drawn at once, and the title says what the module gives for it', async () => {
  const { page, close } = await open(browser, inject('origin'), { javaScript: false });
  expect(await firstWeight(page)).toBeCloseTo(pounds(10, 'E4', proposed), 1);
  const more = pounds(10, 'E4', proposed) / pounds(10, 'E4', physics.fromInches(25.5)) - 1;
  const title = (await page.locator('h1').innerText()).replace(/\s+/g, ' ');
  expect(title).toBe(
    `Same strings, one inch longer: ${(100 * more).toFixed(0)} % more pull. Would your hand notice?`,
  );
  await close();
});

test('handle and weights are on the first screen of a phone, upright and on its side, below a head of one line', async () => {
  const { page, close } = await open(browser, inject('origin'), { untouched: true });
  for (const [width, height] of [
    [390, 844],
    [360, 640],
    [844, 390],
  ] as const) {
    await page.setViewportSize({ width, height });
    const name = `${width}x${height}`;
    const { y, height: tall } = (await handleOf(page).boundingBox()) ?? { y: Infinity, height: 0 };
    expect(y + tall, `handle at ${name}`).toBeLessThanOrEqual(height);
    const weights = await page.locator('.stage path.weight').boundingBox();
    expect(
      (weights?.y ?? Infinity) + (weights?.height ?? 0),
      `weights at ${name}`,
    ).toBeLessThanOrEqual(height);
    const head = await page.locator('.head .bar').boundingBox();
    expect(head?.height, `head at ${name}`).toBeLessThanOrEqual(60);
    const tops = await page
      .locator('.head nav a')
      .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().top));
    expect(new Set(tops).size, `rooms at ${name}`).toBe(1);
  }
  await close();
});

test.each([
  ['a mouse', desktop, dragWithMouse],
  ['a finger', phone, dragWithFinger],
])(
  'dragging the saddle with %s changes the pull with the square of the length',
  async (_, viewport, drag) => {
    const { page, problems, close } = await open(browser, inject('origin'), { viewport });
    const handle = handleOf(page);
    await handle.scrollIntoViewIfNeeded();
    const scrolled = await page.evaluate(() => scrollY);
    await drag(handle, { y: 30 });
    const { now } = await sliderValue(handle);
    expect(now).toBeGreaterThan(proposed);
    expect(await firstWeight(page)).toBeCloseTo(pounds(10, 'E4', now), 1);
    expect(await page.evaluate(() => scrollY), 'the page stays where it is').toBe(scrolled);
    expect(await page.evaluate(() => getSelection()?.toString())).toBe('');
    expect(problems).toEqual([]);
    await close();
  },
);

test('keys follow one contract, and each release is one step of undo', async () => {
  const { page, close } = await open(browser, inject('origin'), { viewport: desktop });
  const handle = handleOf(page);
  await pressKey(handle, 'ArrowUp');
  expect((await sliderValue(handle)).text).toMatch(/^26\.75\sin$/);
  await pressKey(handle, 'Shift+ArrowUp');
  expect((await sliderValue(handle)).text).toMatch(/^26\.78\sin$/);
  await pressKey(handle, 'PageUp');
  expect((await sliderValue(handle)).text).toMatch(/^27\.78\sin$/);
  await page.keyboard.press('Control+z');
  expect((await sliderValue(handle)).text).toMatch(/^26\.78\sin$/);
  await page.keyboard.press('Control+Shift+z');
  expect((await sliderValue(handle)).text).toMatch(/^27\.78\sin$/);
  await pressKey(handle, 'Home');
  const { now, min } = await sliderValue(handle);
  expect(now).toBe(min);
  await close();
});

test('a typed length does the same, and a wrong one stays in the field with a reason', async () => {
  const { page, close } = await open(browser, inject('origin'));
  const field = page.getByLabel('Speaking length', { exact: true }).and(page.locator('input'));
  await field.fill('685.8 mm');
  await field.press('Enter');
  // What reads a length comes when somebody is about to type.
  await expect
    .poll(() => firstWeight(page), { timeout: 20_000 })
    .toBeCloseTo(pounds(10, 'E4', 0.6858), 1);
  await field.fill('long');
  await field.press('Enter');
  await expect
    .poll(() => page.getByRole('alert').textContent(), { timeout: 20_000 })
    .toContain('Type a length');
  expect(await field.inputValue()).toBe('long');
  expect(await firstWeight(page)).toBeCloseTo(pounds(10, 'E4', 0.6858), 1);
  await close();
});

test('a string past its strength is drawn broken and has no number', async () => {
  const { page, close } = await open(
    browser,
    inject('origin') + '#v1/l-1000/e4-p10/b3-p13/g3-p17/d3-w26/a2-w36/e2-w46',
  );
  expect(await page.locator('.stage text.pull').first().textContent()).toBe('breaks');
  await close();
});

test('an instrument taken in hand is a step that Back and Forward undo and redo', async () => {
  const { page, close } = await open(browser, inject('origin'), { viewport: desktop });
  const inHand = () => page.locator('.bar select').first().inputValue();
  await page.getByRole('link', { name: /^Godwit/ }).click();
  await expect.poll(inHand).toBe('godwit');
  await page.getByRole('link', { name: /^Curlew/ }).click();
  await expect.poll(inHand).toBe('curlew');
  await page.goBack();
  await expect.poll(inHand).toBe('godwit');
  await page.goBack();
  await expect.poll(inHand).toBe('redshank');
  await page.goForward();
  await expect.poll(inHand).toBe('godwit');
  await close();
});

test('the instrument is remembered, and travels in links where nothing can be kept', async () => {
  const { page, close } = await open(browser, inject('origin'), { viewport: desktop });
  await page.getByRole('link', { name: /^Dunlin/ }).click();
  await expect.poll(() => page.locator('.bar select').first().inputValue()).toBe('dunlin');
  await page.goto(inject('origin') + 'bench/');
  await expect.poll(() => page.locator('.bar select').first().inputValue()).toBe('dunlin');
  await close();

  const blocked = await open(browser, inject('origin'), {
    viewport: desktop,
    before: () => {
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('blocked', 'SecurityError');
        },
      });
    },
  });
  await blocked.page.getByRole('link', { name: /^Dunlin/ }).click();
  await expect.poll(() => blocked.page.locator('.bar select').first().inputValue()).toBe('dunlin');
  await expect
    .poll(async () => (await blocked.page.getByRole('status').allTextContents()).join(' '))
    .toContain('keeps nothing');
  await blocked.page.getByRole('link', { name: 'Bench', exact: true }).click();
  await blocked.page.waitForURL(/bench/);
  await expect.poll(() => blocked.page.locator('.bar select').first().inputValue()).toBe('dunlin');
  // A page that is left early leaves what it was still asking for.
  expect(blocked.problems.filter((each) => !each.startsWith('failed: '))).toEqual([]);
  await blocked.close();
});
