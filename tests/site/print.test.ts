import type { Page } from 'playwright-core';
import { beforeAll, expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, open, scrollThrough, type Visit } from './kit.ts';

let chapter: Visit;
beforeAll(async () => {
  // Its first figure has a narrow and a wide sheet, of which paper takes the wide one.
  chapter = await open(browser, address('course/stiff-strings/'), { viewport: desktop });
  await scrollThrough(chapter.page);
});

const address = (path: string): string => inject('origin') + path;

async function sheets(page: Page): Promise<number> {
  const pdf = await page.pdf({ format: 'A4' });
  return pdf.toString('latin1').match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;
}

test('a chapter prints to its end from a wide screen, every figure alive', async () => {
  const still = await open(browser, chapter.page.url(), { viewport: desktop, javaScript: false });
  const wanted = await sheets(still.page);
  await still.close();
  expect(wanted).toBeGreaterThan(4);
  expect(await sheets(chapter.page)).toBe(wanted);
});

test('a citation carries the number of its source, on paper only', async () => {
  const { page } = chapter;
  const cited = page.locator('.prose a.cite').first();
  const number = cited.locator('sup');
  expect(await number.isVisible()).toBe(false);
  await page.emulateMedia({ media: 'print' });
  expect(await number.isVisible()).toBe(true);
  const place = Number(await number.textContent());
  const href = (await cited.getAttribute('href')) ?? '';
  const listed = page.locator('.cited li').nth(place - 1);
  expect(await listed.getAttribute('id')).toBe(href.slice(1));
  await page.emulateMedia({ media: null });
});

test('on paper what folds is open, what moves is text or gone, and nothing is to be pressed', async () => {
  const { page } = chapter;
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  expect(await page.locator('main details:not([open], [data-as-is])').count()).toBe(0);
  expect(await page.locator('button:visible, [data-handle]:visible, nav:visible').count()).toBe(0);
  const sentence = page.locator('.prose > p', { has: page.locator('[role="slider"]') }).first();
  expect(await sentence.innerText()).toMatch(/^At 25\.5\sin, tuned to E4, a gauge of 10 has/);
  // The figure that is alive has turned to its wide sheet.
  expect(await page.locator('.figure-body div.wide .stage:visible').count()).toBe(1);
  expect(await page.locator('.figure-body .phone').count()).toBe(0);
});

test('the stringing sheet with its bends keeps to one page', async () => {
  const link = '#v1/n-Redshank/l-647.7/e4-p10/b3-p13/g3-p17/d3-w26/a2-w36/e2-w46/b-open';
  const { page, close } = await open(browser, address(`bench/${link}`), { viewport: desktop });
  await scrollThrough(page);
  expect(await page.locator('.bends[open]').count()).toBe(1);
  expect(await sheets(page)).toBe(1);
  await close();
});
