import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';

import { launch, open, scrollThrough } from './kit.ts';
import { pages } from './pages.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** What a reader gets of a page: its headings, its words, its equations, and how much each figure draws. */
const contents = (page: Page) =>
  page.evaluate(() => {
    const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];
    const shown = (element: Element) => element.checkVisibility({ visibilityProperty: true });
    return {
      titles: all('h1')
        .filter(shown)
        .map((title) => title.innerText.trim()),
      headings: all('main :is(h2, h3)')
        .filter(shown)
        .map((heading) => heading.innerText.trim()),
      words: (document.querySelector('main')?.innerText ?? '').split(/\s+/).length,
      equations: all('.katex').map((each) => each.querySelector('annotation')?.textContent ?? ''),
      mathml: all('.katex math').length,
      figures: all('figure')
        .filter(shown)
        .map((figure) => {
          const { width, height } = figure.getBoundingClientRect();
          return {
            drawings: figure.querySelectorAll('svg').length,
            isDrawn: width > 0 && height > 0,
          };
        }),
    };
  });

describe.each(pages())('/%s without JavaScript', (path) => {
  test('has the words, the equations and the figures that it has with it', async () => {
    const url = inject('origin') + path;
    const plain = await open(browser, url, { javaScript: false });
    const without = await contents(plain.page);
    await plain.close();
    const full = await open(browser, url);
    await scrollThrough(full.page);
    const withScript = await contents(full.page);
    await full.close();

    expect(without.titles).toHaveLength(1);
    expect(without.titles).toEqual(withScript.titles);
    expect(without.headings).toEqual(withScript.headings);
    expect(without.words).toBeGreaterThanOrEqual(0.9 * withScript.words);
    expect(without.equations).toEqual(withScript.equations);
    expect(without.mathml).toBe(without.equations.length);
    // More may be drawn than with a script, which keeps an answer back until the reader has guessed.
    expect(without.figures.length).toBeGreaterThanOrEqual(withScript.figures.length);
    for (const [i, { drawings }] of withScript.figures.entries()) {
      expect(without.figures[i]?.drawings).toBeGreaterThanOrEqual(drawings);
    }
    expect(without.figures.filter(({ isDrawn }) => !isDrawn)).toEqual([]);
    if (without.figures.length)
      expect(without.figures.some(({ drawings }) => drawings > 0)).toBe(true);
  });
});
