/** What a reader gets of a page, with a script or without. */
import type { Page } from 'playwright-core';

/** Its headings, its words, its equations, and how much each figure draws. */
export const contents = (page: Page) =>
  page.evaluate(() => {
    const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];
    const shown = (element: Element) => element.checkVisibility({ visibilityProperty: true });
    const text = (selector: string) =>
      all(selector)
        .filter(shown)
        .map((element) => element.innerText.trim());
    return {
      titles: text('h1'),
      headings: text('main :is(h2, h3)'),
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

/** By how many pixels the page scrolls sideways, and which elements stick out of it then. */
export const sideways = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const by = scrollWidth - clientWidth;
    const sticksOut = (element: Element) => element.getBoundingClientRect().right > clientWidth + 1;
    const elements = by > 0 ? [...document.body.querySelectorAll('*')].filter(sticksOut) : [];
    return { by, elements: elements.map((element) => element.outerHTML.slice(0, 100)) };
  });
