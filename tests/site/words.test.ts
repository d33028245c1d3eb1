/** What opens beside words, what words light up, what a chapter lists, and the search. */
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, open, smallPhone } from './kit.ts';

const chapter = (slug = 'speaking-length') => `${inject('origin')}course/${slug}/`;
const TERM = 'a.term[data-slip="term-scale-length"]';

test('a word of the trade shows its entry to a pointer, which may cross to it, until Escape', async () => {
  const { page, problems, close } = await open(browser, chapter(), { viewport: desktop });
  const slip = page.locator('#term-scale-length');
  await page.locator(TERM).hover();
  await slip.waitFor({ state: 'visible' });
  await slip.hover();
  // The pointer rests on the entry for longer than it takes to close.
  await page.waitForTimeout(600);
  expect(await slip.isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  await slip.waitFor({ state: 'hidden' });
  await page.locator(TERM).hover();
  await slip.waitFor({ state: 'visible' });
  await page.locator('h1').hover();
  await slip.waitFor({ state: 'hidden' });
  expect(problems).toEqual([]);
  await close();
});

test('on focus it shows its entry, describes it, and hands on to its link', async () => {
  const { page, close } = await open(browser, chapter(), { viewport: desktop });
  // The keyboard comes from the word before.
  await page.locator('a.term[data-slip="term-fret"]').focus();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  const slip = page.locator('#term-scale-length');
  await slip.waitFor({ state: 'visible' });
  const described = await page.locator(TERM).getAttribute('aria-describedby');
  expect(await page.locator(`[id="${described}"]`).textContent()).toMatch(/laid out/);
  await page.keyboard.press('Tab');
  expect(await slip.locator('a').evaluate((a) => a === document.activeElement)).toBe(true);
  await page.keyboard.press('Escape');
  await slip.waitFor({ state: 'hidden' });
  expect(await page.locator(TERM).evaluate((a) => a === document.activeElement)).toBe(true);
  await close();
});

test('a tap opens it on a small phone, inside the window, and a tap elsewhere closes it', async () => {
  const { page, close } = await open(browser, chapter(), { viewport: smallPhone });
  await page.locator(TERM).tap();
  const slip = page.locator('#term-scale-length');
  await slip.waitFor({ state: 'visible' });
  expect(new URL(page.url()).pathname).toMatch(/speaking-length\/$/);
  const box = await slip.boundingBox();
  expect(box?.x).toBeGreaterThanOrEqual(0);
  expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(smallPhone.width);
  await page.touchscreen.tap(5, (box?.y ?? 0) - 60);
  await slip.waitFor({ state: 'hidden' });
  await close();
});

test('without script a word leads to its entry in the glossary', async () => {
  const { page, close } = await open(browser, chapter(), { javaScript: false });
  await page.locator(TERM).click();
  expect(new URL(page.url()).hash).toBe('#scale-length');
  expect(await page.locator('#scale-length').textContent()).toContain('Scale length');
  await close();
});

test('every citation leads to the chapter’s list and from there back to the first of them', async () => {
  const { page, close } = await open(browser, chapter(), { javaScript: false });
  const { cited, listed, backs } = await page.evaluate(() => ({
    cited: [
      ...new Set(
        [...document.querySelectorAll('.prose a.cite')].map((a) => a.getAttribute('href')),
      ),
    ],
    listed: [...document.querySelectorAll('.cited li')].map((li) => `#${li.id}`),
    backs: [...document.querySelectorAll('.cited .ways a')].map(
      (a) => document.querySelector(a.getAttribute('href') ?? '')?.className,
    ),
  }));
  expect(listed.length).toBeGreaterThan(1);
  expect(listed).toEqual(cited);
  expect(backs).toEqual(listed.map(() => 'cite'));
  await close();
});

test('a word that points lights its part until it is put out', async () => {
  const { page, close } = await open(browser, chapter('pitch'), { viewport: desktop });
  const word = page.locator('[data-points-to="stair-steps"]').first();
  const lit = page.locator('[data-part="stair-steps"][data-lit]');
  expect(await lit.count()).toBe(0);
  await word.hover();
  await lit.first().waitFor();
  await page.locator('h1').hover();
  await lit.first().waitFor({ state: 'detached' });
  await word.focus();
  await page.keyboard.press('Enter');
  expect(await word.getAttribute('aria-pressed')).toBe('true');
  await page.locator('h1').hover();
  expect(await lit.count()).toBeGreaterThan(0);
  await page.keyboard.press('Escape');
  expect(await word.getAttribute('aria-pressed')).toBe('false');
  await close();
});

test('the search opens by its key, is walked by arrows, and leads to a section', async () => {
  const { page, problems, requests, close } = await open(browser, inject('origin'), {
    viewport: desktop,
  });
  const asked = () => requests.some((url) => url.endsWith('search-index.json'));
  expect(asked()).toBe(false);
  await page.keyboard.press('/');
  const dialog = page.getByRole('dialog', { name: 'Search' });
  await dialog.waitFor({ state: 'visible' });
  await page.keyboard.type('saddle lies');
  const first = dialog.locator('.found a').first();
  await first.waitFor();
  expect(asked()).toBe(true);
  expect(await first.locator('mark').count()).toBeGreaterThan(0);
  await page.keyboard.press('ArrowDown');
  expect(await first.evaluate((a) => a === document.activeElement)).toBe(true);
  await page.keyboard.press('Enter');
  await page.waitForURL(/speaking-length\/#measuring/);
  expect(problems).toEqual([]);
  await close();
});

test('the search says when nothing is found, and closes by Escape', async () => {
  const { page, close } = await open(browser, chapter(), { viewport: smallPhone });
  let letThrough = (): void => undefined;
  const held = new Promise<void>((done) => (letThrough = done));
  await page.route(/\/open\.[\w-]+\.js$/, async (route) => {
    await held;
    await route.continue();
  });
  await page.getByRole('button', { name: 'Search' }).click();
  const dialog = page.getByRole('dialog', { name: 'Search' });
  // What is typed before it is there has no field to go to.
  await dialog.waitFor({ state: 'visible' });
  // A reader is quicker than what searches: the next letters join those.
  await page.keyboard.type('xylo');
  letThrough();
  await dialog.getByText('Nothing here mentions “xylo”').waitFor();
  await page.keyboard.type('phone');
  await dialog.getByText('Nothing here mentions “xylophone”').waitFor();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'hidden' });
  await close();
});
