/** The dotted line of a number that can be dragged lies right under its own text, in every chapter, and its room moves no line. */
import type { Locator, Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { open, phone } from './kit.ts';
import { pages } from './pages.ts';

/** How far below the text's own box the lowest drawn pixel of the number lies, in CSS pixels, read off a picture. */
async function lowestBelowText(number: Locator): Promise<number> {
  const page = number.page();
  const at = await number.evaluate((each) => {
    each.scrollIntoView({ block: 'center', behavior: 'instant' });
    const text = document.createRange();
    text.selectNodeContents(each);
    const { left, top, width, bottom } = text.getBoundingClientRect();
    // All but the number's own ink is out of the picture.
    for (const other of document.querySelectorAll<HTMLElement>('body *'))
      if (!other.contains(each)) other.style.visibility = 'hidden';
    for (let up = each.parentElement; up; up = up.parentElement) up.style.color = 'transparent';
    return { left, top, width, bottom };
  });
  const room = 40;
  const picture = await page.screenshot({
    clip: { x: at.left, y: at.top, width: at.width, height: at.bottom - at.top + room },
  });
  const rows = await page.evaluate(async (data) => {
    const bytes = Uint8Array.from(atob(data), (c) => c.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes]));
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
    if (!context) return [];
    context.drawImage(bitmap, 0, 0);
    const { data: pixels, width, height } = context.getImageData(0, 0, bitmap.width, bitmap.height);
    const ground = [...pixels.slice(-4)];
    return Array.from({ length: height }, (_, y) =>
      Array.from({ length: width }, (_, x) =>
        [0, 1, 2].some((c) => Math.abs(pixels[4 * (y * width + x) + c]! - ground[c]!) > 60),
      ).some(Boolean),
    );
  }, picture.toString('base64'));
  await number.evaluate((each) => {
    for (const other of document.querySelectorAll<HTMLElement>('body *'))
      if (!other.contains(each)) other.style.visibility = '';
    for (let up = each.parentElement; up; up = up.parentElement) up.style.color = '';
  });
  return rows.lastIndexOf(true) + 1 - (at.bottom - at.top);
}

/** The first number of each kind of its surroundings: a line of prose, a list, a caption, a note in the margin. */
async function oneOfEach(page: Page): Promise<Locator[]> {
  const numbers = await page.locator('main span[role="slider"]:visible').all();
  const found = new Map<string, Locator>();
  for (const number of numbers) {
    const kind = await number.evaluate((each) => {
      const { fontSize, lineHeight } = getComputedStyle(each);
      return [each.parentElement?.tagName, fontSize, lineHeight].join(' ');
    });
    if (!found.has(kind)) found.set(kind, number);
  }
  return [...found.values()];
}

// Without scripts a chapter stands at once, its numbers as they are drawn.
test('in every chapter the line lies under its own text and strikes through no other', async () => {
  const chapters = pages().filter((path) => /^course\/[^/]+\/$/.test(path));
  expect(chapters.length).toBeGreaterThanOrEqual(14);
  const visit = await open(browser, `${inject('origin')}${chapters[0]}`, {
    viewport: phone,
    javaScript: false,
  });
  let dragged = 0;
  for (const chapter of chapters) {
    await visit.page.goto(`${inject('origin')}${chapter}`);
    const numbers = await oneOfEach(visit.page);
    dragged += Math.min(1, numbers.length);
    for (const number of numbers) {
      const below = await lowestBelowText(number);
      // The text's box ends under its letters' tails: the line lies about there, and the next line of prose begins lower still.
      expect(below, chapter).toBeGreaterThan(-8);
      expect(below, chapter).toBeLessThanOrEqual(2);
    }
  }
  expect(dragged, 'chapters with a number to drag').toBeGreaterThanOrEqual(13);
  await visit.close();
});
