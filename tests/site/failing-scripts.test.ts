/** Scripts that don't arrive, arrive late, or arrive at the second attempt: the figure stands, and says how to go on. */
import type { Page, Route } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, dragWithMouse, open, sliderValue } from './kit.ts';

const chapter = 'course/three-things-set-the-pull/';
const figure = (page: Page) => page.locator('#three-handles');
const line = (page: Page) => figure(page).locator('.not-arrived');
const handle = (page: Page) => figure(page).locator('[data-handle="length"]:visible');

/** The chapter with files of scripts whose names match held back until `let through`. */
async function holding(files: RegExp, answer: (route: Route) => Promise<void>) {
  const { page, close } = await open(browser, `${inject('origin')}start/`, { viewport: desktop });
  let held = true;
  await page.route(files, (route) => (held ? answer(route) : route.continue()));
  await page.goto(inject('origin') + chapter);
  return { page, close, letThrough: () => (held = false) };
}

const refused = (route: Route) => route.abort('failed');
const missing = (route: Route) => route.fulfill({ status: 404, body: 'Not found' });

/** Nothing in the figure takes the focus or a press; what it draws and says is there. */
async function expectStill(page: Page): Promise<void> {
  expect(await figure(page).locator('.stage svg[role="img"]:visible').count()).toBeGreaterThan(0);
  expect(await handle(page).count()).toBe(0);
  const reached = await figure(page).evaluate((it) => {
    const hands = it.querySelectorAll<HTMLElement>(
      'astro-island :is([tabindex], button, input, select)',
    );
    return [...hands].filter(
      (each) => each.tabIndex >= 0 || getComputedStyle(each).pointerEvents !== 'none',
    ).length;
  });
  expect(reached, 'what takes the focus or a press and does nothing').toBe(0);
}

async function expectAlive(page: Page): Promise<void> {
  const waiting = figure(page).locator('astro-island[ssr]');
  await expect.poll(() => waiting.count(), { timeout: 20_000 }).toBe(0);
  await expect.poll(() => line(page).count(), { timeout: 20_000 }).toBe(0);
  const { now } = await sliderValue(handle(page));
  await dragWithMouse(handle(page), { x: -60 });
  expect((await sliderValue(handle(page))).now).toBeLessThan(now);
}

test.each([
  ['refused', refused],
  ['missing', missing],
])('a figure whose script is %s stands still, and comes alive at a press', async (_, answer) => {
  const { page, close, letThrough } = await holding(/\/ThreeHandles\.[^/]+\.js/, answer);
  await figure(page).scrollIntoViewIfNeeded();
  await expect.poll(() => line(page).count(), { timeout: 20_000 }).toBe(1);
  expect(await line(page).innerText()).toContain('didn’t load');
  await expectStill(page);
  // The rest of the page is alive.
  await page.locator('.hand select').first().focus();
  await expect.poll(() => page.locator('.hand astro-island:not([ssr])').count()).toBe(1);

  letThrough();
  await line(page).getByRole('button', { name: 'Try again' }).click();
  await expectAlive(page);
  expect(await page.locator('[data-still]').count()).toBe(0);
  await close();
});

test('a file that all figures share can come late or after the page is loaded again', async () => {
  const { page, close, letThrough } = await holding(/\/_astro\/figures\.[^/]+\.js/, refused);
  await figure(page).scrollIntoViewIfNeeded();
  await expect.poll(() => line(page).count(), { timeout: 20_000 }).toBe(1);
  await line(page).getByRole('button').click();
  const again = line(page).getByRole('button', { name: 'Load the page again' });
  await expect.poll(() => again.count(), { timeout: 20_000 }).toBe(1);
  letThrough();
  await again.click();
  await page.waitForLoadState('load');
  await figure(page).scrollIntoViewIfNeeded();
  await expectAlive(page);
  await close();
});

test('a figure whose script is slow comes alive without a word', async () => {
  const slow = async (route: Route) => {
    await new Promise((done) => setTimeout(done, 1500));
    await route.continue();
  };
  const { page, close } = await holding(/\/ThreeHandles\.[^/]+\.js/, slow);
  await figure(page).scrollIntoViewIfNeeded();
  await expectAlive(page);
  expect(await page.locator('.not-arrived').count()).toBe(0);
  await close();
});

test('figures that a reader without a net comes to say so once each, and a paragraph once', async () => {
  const { page, close } = await open(browser, inject('origin') + chapter, { viewport: desktop });
  await page.context().setOffline(true);
  await figure(page).scrollIntoViewIfNeeded();
  await page.locator('p [role="slider"]').first().scrollIntoViewIfNeeded();
  await expect.poll(() => page.locator('p + .not-arrived').count(), { timeout: 20_000 }).toBe(1);
  const numbers = page.locator('p:has(+ .not-arrived) [role="slider"]');
  expect(await numbers.count()).toBeGreaterThan(1);
  expect((await numbers.first().textContent())?.trim()).not.toBe('');
  expect(await numbers.first().getAttribute('tabindex')).toBe('-1');
  await page.context().setOffline(false);
  await page.locator('p + .not-arrived').getByRole('button').click();
  await expect.poll(() => page.locator('.not-arrived').count(), { timeout: 20_000 }).toBe(0);
  expect(await numbers.count()).toBe(0);
  await close();
});
