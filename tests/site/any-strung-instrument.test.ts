/**
 * Every chapter, home and the bench for four instruments that are no guitar: one opens the page, the others follow in the address, so
 * that the page is fetched once. Each page is arrived at with another one of the four, and a chapter that can't say all of one of them
 * with that: what says so comes late, and must not push aside what somebody reads.
 */
import type { Page } from 'playwright-core';
import { afterAll, expect, inject, test } from 'vitest';

import { scopesOf } from '../../src/figures/kit/scope/scope.ts';
import { encode } from '../../src/instrument/link.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { fourExamples } from '../figures/four-examples.ts';
import { browser } from './browser.ts';
import { narrowPhone, open, phone, scrollThrough, wake, type Visit } from './kit.ts';
import { pages } from './pages.ts';
import { watchShifts } from './shifts.ts';

const hashes = fourExamples.map(([, state]) => `#${encode(state)}`);

/** Which of the four opens a page: one of which the chapter has to say what it can't, where there is one. */
function firstOn(path: string, i: number): number {
  const chapter = path.split('/')[1] ?? '';
  const scoped = fourExamples.flatMap(([, state], k) =>
    scopesOf(chapter, state).length > 0 ? [k] : [],
  );
  return scoped[i % Math.max(1, scoped.length)] ?? i % fourExamples.length;
}

const wrong =
  /\bNaN\b|\bundefined\b|\bInfinity\b|\[object|\ba (?:8|11|18)(?![\d.]*\S)|\b(?:the )?1 (?:strings|courses|pairs)\b|\bone (?:strings|courses)\b/;

/** All that is shown or spoken, the words in drawings too; and whether the page can be pushed sideways. */
const lookAt = (page: Page) =>
  page.evaluate(() => {
    const spoken = [...document.querySelectorAll('[aria-label], [aria-valuetext]')].flatMap((e) => [
      e.getAttribute('aria-label') ?? '',
      e.getAttribute('aria-valuetext') ?? '',
    ]);
    const drawn = [...document.querySelectorAll('svg text')].map((e) => e.textContent);
    return {
      words: [document.body.innerText, ...spoken, ...drawn].join('\n'),
      beyond: document.documentElement.scrollWidth - innerWidth,
    };
  });

let visit: Visit | undefined;
afterAll(async () => visit?.close());

const walked = pages().filter(
  (path) => path === '' || path === 'bench/' || /^course\/./.test(path),
);

test.each(walked.map((path, i) => [path || 'home', path, i] as const))(
  '%s speaks of each',
  async (_, path, i) => {
    const first = firstOn(path, i);
    await visit?.close();
    visit = await open(browser, inject('origin') + path + (hashes[first] ?? ''), {
      viewport: i % 2 ? phone : narrowPhone,
      before: watchShifts,
      // What moves after a key is taken for its doing, and not counted: so no key yet.
      untouched: true,
    });
    const { page, problems } = visit;
    const moved = await page.evaluate(() => window.shifts);
    expect(moved.sum, moved.what.join('\n')).toBeLessThan(0.003);
    await wake(page);
    await scrollThrough(page);
    for (let k = 0; k < fourExamples.length; k += 1) {
      const at = (first + k) % fourExamples.length;
      const [what = '', { mine } = initialState] = fourExamples[at] ?? [];
      if (k > 0) {
        await page.evaluate((hash) => (location.hash = hash), hashes[at] ?? '');
        await page.waitForFunction((name) => document.body.textContent.includes(name), mine.name);
        await page.waitForTimeout(120);
      }
      const { words, beyond } = await lookAt(page);
      const found = wrong.exec(words);
      expect(found && words.slice(found.index - 60, found.index + 60), what).toBeNull();
      expect(beyond, `${what}, sideways`).toBeLessThanOrEqual(0);
    }
    expect(problems).toEqual([]);
  },
);
