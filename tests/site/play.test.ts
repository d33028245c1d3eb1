/**
 * A little random play on every page; `npm run soak` goes on for as long as it is told. SEED draws another game, and ACTS says
 * how many things are done on a page.
 */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

import { launch, open } from './kit.ts';
import { pages } from './pages.ts';
import { playOn, watchPlay, wrongOn } from './playground.ts';

const { SEED = '1', ACTS = '14' } = process.env;
const seed = SEED === 'random' ? Date.now() % 1e6 : Number(SEED);

// What a page brings when it is asked for, as the search, counts too.
const MOST_MORE = 8e6;

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

// More at once than there are processors gains nothing, and what is late looks like what jumps by itself.
const AT_ONCE = 2;
const places: Promise<unknown>[] = Array.from({ length: AT_ONCE }, () => Promise.resolve());
let next = 0;
/** Waits for one of the places, in turn. */
function inPlace<T>(task: () => Promise<T>): Promise<T> {
  const at = next % AT_ONCE;
  next += 1;
  const done = (places[at] ?? Promise.resolve()).then(task);
  places[at] = done.catch(() => undefined);
  return done;
}

// What is found once may not be found again: no second try.
test.concurrent.each(pages())('/%s stands whatever is played on it', { retry: 0 }, async (path) => {
  const game = { seed, enough: (done: number) => done >= Number(ACTS) };
  const { wrong, log, heap } = await inPlace(() => playOn(browser, inject('origin'), path, game));
  const repeat = `SEED=${seed}: ${log.slice(-12).join('; ')}`;
  expect(wrong, repeat).toEqual([]);
  expect(heap.end - heap.start, `bytes more in use after ${repeat}`).toBeLessThan(MOST_MORE);
});

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
