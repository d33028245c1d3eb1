import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { comeTo, desktop, dragWithMouse, open, pressKey, sliderValue } from './kit.ts';

const saddle = (page: Page) => page.locator('#the-neck [data-handle="length"]:visible');
const stage = (page: Page) => page.locator('#the-neck .stage:visible');

/** Where the handle stands, and the middle of a word of the drawing, from the drawing's left edge, px. */
async function across(page: Page, word: string): Promise<{ handle: number; word: number }> {
  const from = (await stage(page).boundingBox())?.x ?? NaN;
  const middle = async (of: ReturnType<typeof saddle>): Promise<number> => {
    const box = await of.boundingBox();
    return (box?.x ?? NaN) + (box?.width ?? NaN) / 2 - from;
  };
  const written = stage(page).getByText(word, { exact: true }).first();
  return { handle: await middle(saddle(page)), word: await middle(written) };
}

/** Runs in the page: whether an element is drawn the other way round, counting all that it stands in. */
function isTurned(element: Element): boolean {
  let turns = 1;
  for (let each: Element | null = element; each; each = each.parentElement)
    turns *= getComputedStyle(each).scale.startsWith('-1') ? -1 : 1;
  return turns < 0;
}

test('a link turns a neck over for a left hand, mouse and keys with it, and another page remembers', async () => {
  const url = `${inject('origin')}course/speaking-length/`;
  const visit = await open(browser, url, { viewport: desktop });
  const { page, problems } = visit;
  await comeTo(page, '#the-neck');
  const summary = await stage(page).locator('svg').first().getAttribute('aria-label');
  const right = await across(page, 'nut');
  const width = (await stage(page).boundingBox())?.width ?? NaN;

  await page.goto(`${url}#v1/h-left`);
  await page.reload();
  await comeTo(page, '#the-neck');
  const left = await across(page, 'nut');
  expect(left.handle).toBeCloseTo(width - right.handle, 0);
  expect(left.word).toBeCloseTo(width - right.word, 0);
  // Letters are turned back, and what is said is the same.
  const written = stage(page).getByText('nut', { exact: true }).first();
  expect(
    await written.evaluate((text: Element) => (text as SVGTextElement).getScreenCTM()?.a),
  ).toBeGreaterThan(0);
  expect(await stage(page).locator('svg').first().getAttribute('aria-label')).toBe(summary);
  // The row that is pressed is marked before its nut: turned back like letters, the mark would stand among the verdicts.
  expect(await page.locator('#the-neck .row[aria-pressed="true"]:visible').evaluate(isTurned)).toBe(
    true,
  );

  const { now: before } = await sliderValue(saddle(page));
  await dragWithMouse(saddle(page), { x: -21 });
  const { now: dragged } = await sliderValue(saddle(page));
  expect(dragged).toBeGreaterThan(before);
  expect((await across(page, 'nut')).handle).toBeCloseTo(left.handle - 21, -1);
  await pressKey(saddle(page), 'ArrowRight');
  const { now: keyed } = await sliderValue(saddle(page));
  expect(keyed).toBeLessThan(dragged);

  // Another page of the same device, at an address that says nothing of it.
  await page.goto(`${inject('origin')}course/bending/`);
  await page.waitForFunction(() => document.documentElement.dataset.hand === 'left');
  expect(page.url()).not.toContain('h-left');
  // A page that is left early leaves what it was still asking for.
  expect(problems.filter((each) => !each.startsWith('failed: '))).toEqual([]);
  await visit.close();
});

test('a box turns necks over, undo turns them back, and another page remembers', async () => {
  const { page, close } = await open(browser, `${inject('origin')}bench/`, { viewport: desktop });
  const turned = (hand: string) =>
    page.waitForFunction((which) => document.documentElement.dataset.hand === which, hand);
  await comeTo(page, '.side.mine');
  const side = page.locator('.side.mine');
  await side.getByText('Courses, frets, left hand').click();
  const box = side.getByRole('checkbox', { name: 'Draw necks for the left hand' });
  await box.check();
  await turned('left');
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await turned('right');
  expect(await box.isChecked()).toBe(false);
  await box.check();
  await turned('left');
  await page.goto(`${inject('origin')}course/bending/`);
  await turned('left');
  await close();
});
