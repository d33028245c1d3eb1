/** What moves: a plucked string swings while it is in sight, costs no frame once it isn't, and stands still for a reader who wants no motion. */
import type { Locator, Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, lookUp, open, phone, scrollThrough } from './kit.ts';

declare global {
  interface Window {
    /** How many frames the page's scripts have asked for */
    framesAsked: number;
  }
}

/** Runs in the page before its scripts. For what moves no time passes, so that nothing dies away by itself. */
function countFrames(): void {
  const ask = window.requestAnimationFrame.bind(window);
  window.framesAsked = 0;
  window.requestAnimationFrame = (call) => {
    window.framesAsked += 1;
    return ask(() => call(0));
  };
}

const paths = [
  '',
  'bench/',
  'course/three-things-set-the-pull/',
  'course/speaking-length/',
  'course/two-guitars-one-feel/',
  'course/bending/',
];

const asked = (page: Page): Promise<number> => page.evaluate(() => window.framesAsked);
/** How many frames are asked for in a fifth of a second. */
async function askedNow(page: Page): Promise<number> {
  const before = await asked(page);
  await page.waitForTimeout(200);
  return (await asked(page)) - before;
}
const swinging = (page: Page): Promise<number> => page.locator('[data-swinging]').count();
/** Strings that can be pressed. */
const strings = async (page: Page): Promise<Locator[]> => {
  const all = await page.locator('.string-press:not([disabled])').all();
  const shown = await Promise.all(all.map((each) => each.isVisible()));
  return all.filter((_, i) => shown[i]);
};
/** By its key, which plucks a board's strings one after the other. */
const pluck = (string: Locator): Promise<void> => string.press('Enter');

test.each(paths)('/%s: a string swings in sight, and costs nothing out of it', async (path) => {
  const { page, problems, close } = await open(browser, inject('origin') + path, {
    viewport: phone,
    before: countFrames,
  });
  await scrollThrough(page);
  const [string] = await strings(page);
  if (!string) throw new Error('no string to press');
  await string.scrollIntoViewIfNeeded();
  await expect.poll(() => askedNow(page)).toBe(0);
  await pluck(string);
  await expect.poll(() => swinging(page)).toBeGreaterThan(0);
  expect(await askedNow(page)).toBeGreaterThan(0);
  // Away from it.
  await page.evaluate(() => {
    const far = document.querySelector('.string-press')?.getBoundingClientRect().top ?? 0;
    const end = document.documentElement.scrollHeight;
    scrollTo({ top: far + scrollY > end / 2 ? 0 : end, behavior: 'instant' });
  });
  await expect.poll(() => swinging(page)).toBe(0);
  await expect.poll(() => askedNow(page)).toBe(0);
  expect(problems).toEqual([]);
  await close();
});

test.each(paths)('/%s: nothing moves for a reader who wants no motion', async (path) => {
  const { page, problems, close } = await open(browser, inject('origin') + path, {
    viewport: desktop,
    reducedMotion: 'reduce',
    before: countFrames,
  });
  await scrollThrough(page);
  if (path.startsWith('course/')) await lookUp(page);
  const all = await strings(page);
  expect(all.length).toBeGreaterThan(0);
  for (const string of all) {
    await string.scrollIntoViewIfNeeded();
    await expect.poll(() => askedNow(page)).toBe(0);
    const before = await asked(page);
    await pluck(string);
    // What swings or sounds has come by then.
    await expect
      .poll(() =>
        page.evaluate(() =>
          performance.getEntriesByType('resource').some(({ name }) => /\/press\./.test(name)),
        ),
      )
      .toBe(true);
    await page.waitForTimeout(100);
    expect(await swinging(page)).toBe(0);
    expect(await asked(page)).toBe(before);
  }
  const running = await page.evaluate(
    () =>
      document.getAnimations().filter((each) => {
        const { duration } = each.effect?.getTiming() ?? {};
        return each.playState === 'running' && Number(duration) > 10;
      }).length,
  );
  expect(running).toBe(0);
  expect(problems).toEqual([]);
  await close();
});
