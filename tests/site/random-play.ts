/**
 * A little random play on every page; `npm run soak` goes on for as long as it is told. SEED draws another game, and ACTS says
 * how many things are done on a page.
 */
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { playOn } from './playground.ts';

const { SEED = '1', ACTS = '14' } = process.env;
const seed = SEED === 'random' ? Date.now() % 1e6 : Number(SEED);

// What a page brings when it is asked for, as the search, counts too.
const MOST_MORE = 8e6;

// What is found once may not be found again: no second try.
export const unshaken = (paths: readonly string[]): void =>
  test.each(paths)('/%s stands whatever is played on it', { retry: 0 }, async (path) => {
    const game = { seed, enough: (done: number) => done >= Number(ACTS) };
    const { wrong, log, heap } = await playOn(browser, inject('origin'), path, game);
    const repeat = `SEED=${seed}: ${log.slice(-12).join('; ')}`;
    expect(wrong, repeat).toEqual([]);
    expect(heap.end - heap.start, `bytes more in use after ${repeat}`).toBeLessThan(MOST_MORE);
  });
