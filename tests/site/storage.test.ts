/** A device that keeps nothing, has no room left, or kept rubbish: every page works, and says so quietly. */
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, open, pressKey, scrollThrough, sliderValue } from './kit.ts';

// Each runs in the page before its own scripts.
const blocked = (): void => {
  const refuse = () => {
    throw new DOMException('blocked', 'SecurityError');
  };
  Object.defineProperty(window, 'localStorage', { get: refuse });
};
const full = (): void => {
  Storage.prototype.setItem = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
};
const spoilt = (): void => {
  const rubbish = [
    '\u0000\uffff',
    '{"kind":',
    'v1/n-<b>x</b>/e4',
    'null',
    '[[[[',
    'v9/l-1',
    '2 <b>x</b>',
  ];
  const names = [
    'state',
    'theme',
    'probe',
    'done.three.order',
    'answer.three.order',
    'guess.pitch.semitone',
    'reading',
  ];
  names.forEach((name, i) => localStorage.setItem(`speaking-length.${name}`, rubbish[i] ?? ''));
};

const visit = (path: string, before: () => void) =>
  open(browser, inject('origin') + path, { viewport: desktop, before });
const notice = async (page: Page): Promise<string> =>
  (await page.locator('.notice').allInnerTexts()).join(' ');

describe.each([
  ['blocked', blocked, 'keeps nothing'],
  ['full', full, 'keeps nothing'],
  ['spoilt', spoilt, 'could not be read'],
])('with a memory that is %s', (kind, before, sentence) => {
  test('a figure follows the hand, undoes, and the page says so', async () => {
    const { page, problems, close } = await visit('course/three-things-set-the-pull/', before);
    await scrollThrough(page);
    const handle = page.locator('#three-handles [data-handle="length"]:visible');
    const { now } = await sliderValue(handle);
    if (kind === 'spoilt') expect(await notice(page)).toContain(sentence);
    await pressKey(handle, 'PageDown');
    expect((await sliderValue(handle)).now).toBeLessThan(now);
    if (kind !== 'spoilt') await expect.poll(() => notice(page)).toContain(sentence);
    await page.keyboard.press('Control+z');
    expect((await sliderValue(handle)).now).toBe(now);
    expect(problems).toEqual([]);
    await close();
  });

  test('an exercise is answered, and the course’s page stands', async () => {
    const { page, problems, close } = await visit('course/three-things-set-the-pull/', before);
    await scrollThrough(page);
    const exercise = page.locator('.exercise:has(.answer input)').first();
    await exercise.locator('input').fill('12345');
    await exercise.getByRole('button', { name: 'Check' }).click();
    await expect.poll(() => exercise.locator('.verdict').innerText()).not.toBe('');
    await page.goto(`${inject('origin')}course/`);
    await scrollThrough(page);
    const words = await page.locator('main').innerText();
    expect(words.includes('This device keeps nothing')).toBe(kind !== 'spoilt');
    expect(await page.locator('h1').isVisible()).toBe(true);
    expect(problems).toEqual([]);
    await close();
  });

  test('the bench and its sheet stand, and the theme changes', async () => {
    const { page, problems, close } = await visit('bench/', before);
    await scrollThrough(page);
    expect(await page.locator('.stringing tbody tr').count()).toBeGreaterThanOrEqual(4);
    await page.locator('button.theme:visible').click();
    await expect
      .poll(() => page.evaluate(() => document.documentElement.dataset.theme))
      .toBe('light');
    expect(problems).toEqual([]);
    await close();
  });
});
