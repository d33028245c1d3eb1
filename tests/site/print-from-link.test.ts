/** A page that a link opens is printed with that link's numbers, all of them, though nobody has scrolled. */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { open, phone, scrollThrough } from './kit.ts';
import { pages } from './pages.ts';
import { printed } from './pdf.ts';

const LINK =
  '#v1/n-Bittern/l-685.8/e4-p11/b3-p15/g3-p18/d3-w30/a2-w42/e2-w54/u-kg/to/n-Heron/l-610/e4/b3/g3/d3/a2/e2';

/** All that paper would show: words, drawings' letters, what is typed and what is chosen. */
const shown = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    dispatchEvent(new Event('beforeprint'));
    const main = document.querySelector('main');
    const fields = [...document.querySelectorAll<HTMLInputElement>('main input, main select')];
    return [
      ...(main?.innerText.split('\n') ?? []),
      ...[...(main?.querySelectorAll('svg text') ?? [])].map((each) => each.textContent),
      ...[...(main?.querySelectorAll('svg[aria-label]') ?? [])].map(
        (each) => each.getAttribute('aria-label') ?? '',
      ),
      ...fields.map((each) => each.value),
    ].filter((line) => line.trim() !== '');
  });

const awake = (page: Page) =>
  page.waitForFunction(() => !document.querySelector('astro-island[ssr], [data-sleeping]'));

const holding = pages().filter((path) => /^(course\/.+|bench\/|)$/.test(path));

test.each(holding)('/%s unscrolled is what it is scrolled', async (path) => {
  const { page, problems, close } = await open(browser, inject('origin') + path + LINK, {
    viewport: phone,
  });
  await page.emulateMedia({ media: 'print' });
  await awake(page);
  const unscrolled = await shown(page);
  expect(await page.locator('[data-asleep]').count()).toBe(0);
  await scrollThrough(page);
  expect(unscrolled).toEqual(await shown(page));
  // Redshank is whose page it was built for.
  expect(unscrolled.join('\n')).toContain('Bittern');
  expect(problems).toEqual([]);
  await close();
});

/** A page of the link, on its way: scripts like these come once they are let through. */
async function heldBack(path: string, scripts: RegExp) {
  const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
  const page = await context.newPage();
  let letThrough = (): void => undefined;
  const held = new Promise<void>((done) => (letThrough = done));
  await page.route(scripts, async (route) => {
    await held;
    await route.continue();
  });
  await page.goto(inject('origin') + path + LINK, { waitUntil: 'commit' });
  await page.locator('footer').waitFor();
  return { page, letThrough, close: () => context.close() };
}

test('a print that comes before all is awake shows no numbers, and says what to do', async () => {
  const { page, letThrough, close } = await heldBack(
    'course/speaking-length/',
    /Neck\.[\w-]+\.js/i,
  );
  await page.waitForFunction(() => document.querySelector('astro-island:not([ssr])'));
  const early = (await printed(page)).pages.join('');
  expect(early).toContain('stillgettingready');
  expect(early).not.toMatch(/\d/);
  letThrough();
  await awake(page);
  const later = (await printed(page)).pages.join('');
  expect(later).not.toContain('stillgettingready');
  expect(later).toContain('Bittern');
  await close();
});

/** What in the page shows an instrument, and can be seen. */
const instrumentSeen = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('astro-island *, [data-live]')]
      .filter((each) => each.checkVisibility({ visibilityProperty: true }))
      .map((each) => each.textContent.trim())
      .filter((text) => text !== ''),
  );

test.each(['bench/', '', 'course/speaking-length/'])(
  '/%s shows and prints no other instrument before its scripts have come',
  async (path) => {
    const { page, letThrough, close } = await heldBack(path, /\.js$/);
    expect(await instrumentSeen(page)).toEqual([]);
    expect((await printed(page)).pages.join('')).toMatch(/^Thispagewasstillgettingready[^\d]*$/);
    letThrough();
    await page.waitForFunction(() => document.readyState === 'complete');
    await awake(page);
    await expect.poll(() => page.locator('[data-unread], [data-asleep]').count()).toBe(0);
    expect((await instrumentSeen(page)).length).toBeGreaterThan(0);
    expect(await page.locator('body').innerText()).toContain('Bittern');
    await close();
  },
);
