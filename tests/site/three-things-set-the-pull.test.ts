import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';

import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import {
  comeTo,
  desktop,
  dragWithFinger,
  dragWithMouse,
  lookUp,
  open,
  phone,
  pressKey,
  sliderValue,
  type View,
} from './kit.ts';

async function chapter(view: View = {}, hash = '') {
  const visit = await open(
    browser,
    `${inject('origin')}course/three-things-set-the-pull/${hash}`,
    view,
  );
  await comeTo(visit.page, '#three-handles', '#slide-rule');
  return visit;
}

const figure = (page: Page) => page.locator('#three-handles');
const handle = (page: Page, name: string) => figure(page).locator(`[data-handle="${name}"]`);
const live = async (page: Page, key: string): Promise<number> =>
  Number(await page.locator(`span[data-live="${key}"]`).first().textContent());
const hung = async (page: Page): Promise<number> =>
  Number.parseFloat((await figure(page).locator('.stage text.pull[y]').last().textContent()) ?? '');

const SCALE = physics.fromInches(25.5);

/** Pull in N of the plain string in hand, as the module gives it. */
const pull = ({ gauge = 10, note = 'E4', speakingLength = SCALE }): number =>
  physics.tension({
    speakingLength,
    frequency: physics.noteFrequency(note),
    linearDensity: physics.linearDensity({
      kind: 'plain',
      diameter: physics.fromThousandths(gauge),
      material: 'musicWire',
    }),
  });
const pounds = (of: Parameters<typeof pull>[0]) => physics.poundsForce(pull(of));

/** Every live number of each equation with its name, for the eye and for assistive technology. */
const twins = (page: Page) =>
  page.locator('.katex:has([data-live])').evaluateAll((equations) =>
    equations.map((equation) => {
      // A fraction's two halves stand in different orders in the two trees.
      const texts = (half: string) =>
        [...equation.querySelectorAll<HTMLElement>(`${half} [data-live]`)]
          .map((e) => `${e.dataset.live} ${e.textContent}`)
          .sort();
      return [texts('.katex-html'), texts('math')] as const;
    }),
  );

describe.each([
  ['a mouse', desktop, dragWithMouse],
  ['a finger', phone, dragWithFinger],
])('with %s', (_, viewport, drag) => {
  test('each of the three handles gives the pull that the module gives', async () => {
    const { page, problems, close } = await chapter({ viewport });
    expect(await hung(page)).toBeCloseTo(pounds({}), 1);

    await drag(handle(page, 'length'), { x: -60 });
    const length = await sliderValue(handle(page, 'length'));
    expect(length.now).toBeLessThan(SCALE);
    expect(await hung(page)).toBeCloseTo(pounds({ speakingLength: length.now }), 1);

    await drag(handle(page, 'pitch'), { y: 50 });
    const pitch = await sliderValue(handle(page, 'pitch'));
    expect(pitch.now).toBeLessThan(physics.noteNumber('E4'));
    const note = physics.noteName(pitch.now);
    expect(await hung(page)).toBeCloseTo(pounds({ speakingLength: length.now, note }), 1);

    await drag(handle(page, 'gauge'), { x: 22 });
    const gauge = await sliderValue(handle(page, 'gauge'));
    expect(gauge.now).toBeGreaterThan(10);
    const tried = { speakingLength: length.now, note, gauge: gauge.now };
    expect(await hung(page)).toBeCloseTo(pounds(tried), 1);

    await page.locator('.derivation').scrollIntoViewIfNeeded();
    await expect.poll(() => live(page, 'eq.T')).toBeCloseTo(pull(tried), 1);
    expect(problems).toEqual([]);
    await close();
  });
});

test('keys move each handle by its own steps, and the gauge from one that exists to the next', async () => {
  const { page, close } = await chapter({ viewport: desktop });
  await pressKey(handle(page, 'length'), 'Shift+ArrowRight');
  expect((await sliderValue(handle(page, 'length'))).now).toBeCloseTo(SCALE + physics.INCH / 32, 6);
  await pressKey(handle(page, 'pitch'), 'ArrowDown', 2);
  expect((await sliderValue(handle(page, 'pitch'))).text).toBe('D4');
  await pressKey(handle(page, 'gauge'), 'End');
  expect((await sliderValue(handle(page, 'gauge'))).text).toBe('20 thousandths, plain');
  await pressKey(handle(page, 'gauge'), 'ArrowLeft', 3);
  expect((await sliderValue(handle(page, 'gauge'))).text).toBe('17 thousandths, plain');
  await page.keyboard.press('Control+z');
  expect((await sliderValue(handle(page, 'gauge'))).text).toBe('18 thousandths, plain');
  await page.getByRole('button', { name: /^Back to E4/ }).click();
  expect(await hung(page)).toBeCloseTo(pounds({}), 1);
  await close();
});

test('the equations say the same to the eye and to assistive technology, and their line is right', async () => {
  const { page, close } = await chapter({ viewport: desktop });
  await pressKey(handle(page, 'length'), 'PageUp', 2);
  await pressKey(handle(page, 'gauge'), 'ArrowRight', 2);
  await page.locator('.derivation').scrollIntoViewIfNeeded();
  const length = (await sliderValue(handle(page, 'length'))).now;
  await expect.poll(() => live(page, 'eq.L')).toBeCloseTo(length, 4);
  const equations = await twins(page);
  expect(equations.length).toBeGreaterThan(2);
  for (const [seen, heard] of equations) expect(heard).toEqual(seen);
  const [mu, l, f, t] = [
    await live(page, 'eq.mu'),
    await live(page, 'eq.L'),
    await live(page, 'eq.f'),
    await live(page, 'eq.T'),
  ];
  const worked = mu * 1e-3 * (2 * l * f) ** 2;
  expect(Math.abs(worked / t - 1)).toBeLessThan(2e-3);
  await close();
});

test('a typed value does the same, and a wrong one stays in its field with a reason', async () => {
  const { page, close } = await chapter();
  const field = figure(page).getByRole('textbox', { name: 'Pitch' });
  await field.fill('d4');
  await field.press('Enter');
  expect(await hung(page)).toBeCloseTo(pounds({ note: 'D4' }), 1);
  await field.fill('E9');
  await field.press('Enter');
  expect(await field.inputValue()).toBe('E9');
  expect(await figure(page).getByRole('alert').textContent()).toMatch(/^Notes from/);
  expect(await hung(page)).toBeCloseTo(pounds({ note: 'D4' }), 1);
  await close();
});

test('a number in the prose moves the drawing', async () => {
  const { page, close } = await chapter({ viewport: desktop });
  await comeTo(page, 'p:has([role="slider"])');
  const number = page.locator('p [role="slider"]').first();
  await dragWithMouse(number, { x: -60 });
  const { now } = await sliderValue(handle(page, 'length'));
  expect(now).toBeLessThan(SCALE);
  expect((await sliderValue(number)).now).toBe(now);
  expect(await hung(page)).toBeCloseTo(pounds({ speakingLength: now }), 1);
  await close();
});

test('another string in hand is drawn with its own numbers, on every instrument', async () => {
  const { page, close } = await chapter({}, '#v1/l-863.6/g2-w45/d2-w65/a1-w85/e1-w105/u-n');
  await figure(page).getByRole('radio', { name: /E 1/ }).check({ force: true });
  expect((await sliderValue(handle(page, 'gauge'))).text).toBe('2.67 mm, wound');
  expect((await sliderValue(handle(page, 'pitch'))).now).toBe(physics.noteNumber('E1'));
  const newtons = await hung(page);
  await page.locator('.derivation').scrollIntoViewIfNeeded();
  await expect.poll(() => live(page, 'eq.T')).toBeCloseTo(newtons, 0);
  await close();
});

test('a string past its strength is drawn broken and has no number', async () => {
  const { page, close } = await chapter();
  await pressKey(handle(page, 'length'), 'End');
  await pressKey(handle(page, 'pitch'), 'End');
  expect(await figure(page).locator('.stage text.pull[y]').last().textContent()).toBe('breaks');
  const sentence = page.locator('[data-live="three.pull"]').first();
  await sentence.scrollIntoViewIfNeeded();
  await expect.poll(() => sentence.textContent()).toMatch(/hold/);
  await close();
});

test('the hairline reads a quarter for half the length and half for half the mass', async () => {
  const { page, close } = await chapter({ viewport: desktop });
  await lookUp(page);
  const rules = page.locator('#slide-rule');
  const hairline = rules.locator('[data-handle="factor"]');
  const read = () => rules.locator('text.pull').allTextContents();
  await pressKey(hairline, 'Home');
  const factors = (texts: string[]) => texts.map((text) => Number(/×([\d.]+)/.exec(text)?.[1]));
  expect(factors(await read())).toEqual([0.25, 0.25, 0.5, 0.25]);
  await dragWithMouse(hairline, { x: 90 });
  const factor = 2 ** (await sliderValue(hairline)).now;
  expect(factor).toBeGreaterThan(0.5);
  const [length = NaN, , mass = NaN] = factors(await read());
  expect(length).toBeCloseTo(factor ** 2, 2);
  expect(mass).toBeCloseTo(factor, 2);
  await close();
});

test('handles keep clear of the edge of a phone, where a swipe goes back', async () => {
  const { page, close } = await chapter();
  for (const name of ['length', 'pitch', 'gauge']) {
    for (const key of ['Home', 'End']) {
      await pressKey(handle(page, name), key);
      const box = await handle(page, name).boundingBox();
      expect(box?.x, `${name} at ${key}`).toBeGreaterThanOrEqual(24);
      expect(phone.width - (box?.x ?? 0) - (box?.width ?? 0)).toBeGreaterThanOrEqual(24);
    }
  }
  await close();
});
