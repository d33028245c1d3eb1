import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { open } from './kit.ts';
import { watchPlay, wrongOn } from './playground.ts';

test('the watch sees what is no number, and what jumps without a hand', async () => {
  const { page, close } = await open(browser, inject('origin'), { before: watchPlay });
  expect(await wrongOn(page)).toEqual([]);
  await page.evaluate(async () => {
    await new Promise((done) => setTimeout(done, 700));
    const block = document.createElement('div');
    block.style.height = '200px';
    document.querySelector('main')?.prepend(block, `${Number('x')} lb`);
    document.querySelector('svg *')?.setAttribute('width', 'NaN');
  });
  await expect.poll(async () => (await wrongOn(page)).join(' ')).toMatch(/jumped/);
  const wrong = (await wrongOn(page)).join(' ');
  expect(wrong).toMatch(/on the screen: [^]*NaN lb/);
  expect(wrong).toMatch(/width: …NaN…/);
  await close();
});
