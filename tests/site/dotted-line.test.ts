/** The dotted line of a number that can be dragged lies right under its own text, in every chapter, and its room moves no line. */
import type { Locator } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { open, phone, scrollThrough } from './kit.ts';

/** How far below the text's own box the lowest drawn pixel of the number lies, in CSS pixels, read off a picture. */
async function lowestBelowText(number: Locator): Promise<{ below: number; line: number }> {
  const page = number.page();
  const at = await number.evaluate((each) => {
    each.scrollIntoView({ block: 'center', behavior: 'instant' });
    const text = document.createRange();
    text.selectNodeContents(each);
    const { left, top, width, bottom } = text.getBoundingClientRect();
    const line = parseFloat(getComputedStyle(each.closest('p, li') ?? each).lineHeight);
    // All but the number's own ink is out of the picture.
    for (const other of document.querySelectorAll<HTMLElement>('body *'))
      if (!other.contains(each)) other.style.visibility = 'hidden';
    for (let up = each.parentElement; up; up = up.parentElement) up.style.color = 'transparent';
    return { left, top, width, bottom, line };
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
  return { below: rows.lastIndexOf(true) + 1 - (at.bottom - at.top), line: at.line };
}

test('the line lies under its own text and strikes through no other', async () => {
  const { page, close } = await open(
    browser,
    `${inject('origin')}course/three-things-set-the-pull/`,
    { viewport: phone },
  );
  await scrollThrough(page);
  const number = page.locator('.prose p .number:visible').first();
  const { below } = await lowestBelowText(number);
  // The text's box ends under its letters' tails: the line lies about there, and the next line of prose begins lower still.
  expect(below).toBeGreaterThan(-8);
  expect(below).toBeLessThanOrEqual(2);
  await close();
});
