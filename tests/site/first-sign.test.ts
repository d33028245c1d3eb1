/** A page loads nothing until somebody is there, and what that somebody does first is not lost while the scripts come. */
import { expect, inject, test } from 'vitest';

import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import { desktop, open, sliderValue, touch } from './kit.ts';

/** The page proposes an inch more than 25.5 in. */
const started = physics.fromInches(26.5);
const patience = { timeout: 20_000 };
const late = { what: /\/(Monochord|InstrumentBar|core)\.[^/]+\.js/, by: 1200 };

test('a mouse that takes hold before the scripts have come drags the saddle, and what was typed and chosen stays', async () => {
  const { page, problems, responses, close } = await open(browser, inject('origin'), {
    viewport: desktop,
    untouched: true,
    late,
  });
  const figures = () => responses.filter((each) => /\/Monochord\./.test(each.url())).length;
  expect(figures()).toBe(0);
  const handle = page.locator('[data-handle="length"]');
  await page.getByLabel('Units').selectOption('mm-N');
  const { x, y, width, height } = (await handle.boundingBox()) ?? {
    x: 0,
    y: 0,
    width: 0,
    height: 0,
  };
  await page.mouse.move(x + width / 2, y + height / 2);
  await page.mouse.down();
  await page.mouse.move(x + width / 2, y + height / 2 + 20, { steps: 4 });
  await expect.poll(figures, patience).toBe(1);
  await expect.poll(async () => (await sliderValue(handle)).now, patience).toBeGreaterThan(started);
  // It still holds it.
  await page.mouse.move(x + width / 2, y + height / 2 - 20, { steps: 4 });
  await expect.poll(async () => (await sliderValue(handle)).now, patience).toBeLessThan(started);
  await page.mouse.up();
  await touch(page);
  expect((await sliderValue(handle)).text).toMatch(/mm$/);
  expect(await page.getByLabel('Units').inputValue()).toBe('mm-N');
  expect(problems).toEqual([]);
  await close();
});

test('keys that come before the scripts put the marks of a guess, each from where the one before left it', async () => {
  for (const [chapter, name] of [
    ['a-scale-for-every-string', 'nut'],
    ['when-strings-break', 'wire-0'],
    ['in-tune-up-the-neck', 'saddle-0'],
  ] as const) {
    const { page, problems, close } = await open(browser, `${inject('origin')}course/${chapter}/`, {
      untouched: true,
      late: { what: /\/(DrawNut|TuneUp|DrawSaddles)\.[^/]+\.js/, by: 800 },
    });
    const mark = page.locator(`[data-handle="${name}"]`);
    const now = async () => (await sliderValue(mark)).now;
    const before = await now();
    await mark.focus();
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    // Nothing is there yet that could answer.
    expect(await now(), chapter).toBe(before);
    await expect.poll(now, patience).toBeGreaterThan(before);
    const twice = (await now()) - before;
    // The mark has the focus still.
    await page.keyboard.press('ArrowUp');
    expect((await now()) - before, chapter).toBeCloseTo(1.5 * twice, 5);
    expect(problems).toEqual([]);
    await close();
  }
});

test('keys, and a link that is put into the address, are signs too', async () => {
  const { page, problems, close } = await open(browser, inject('origin'), {
    viewport: desktop,
    untouched: true,
    late,
  });
  const handle = page.locator('[data-handle="length"]');
  await handle.press('ArrowUp');
  await expect.poll(async () => (await sliderValue(handle)).text, patience).toMatch(/^26\.75\sin$/);
  await expect.poll(() => page.getByLabel('Undo').isEnabled(), patience).toBe(true);
  expect(problems).toEqual([]);
  await close();

  const other = await open(browser, `${inject('origin')}reference/strength/`, { untouched: true });
  await other.page.evaluate(() => {
    location.hash = '#v1/n-Knot/l-500/e4-p10/b3-p13/g3-p17/d3-w26';
  });
  await expect
    .poll(() => other.page.locator('.bar .facts').textContent(), patience)
    .toMatch(/4\s+strings/);
  await other.close();
});
