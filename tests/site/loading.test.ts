import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';

import { launch, open, phone, scrollThrough, smallPhone } from './kit.ts';
import { pages } from './pages.ts';
import { fontBytes, scriptBytes } from './weights.ts';

const kilobyte = 1000;

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

declare global {
  interface Window {
    /** The page's cumulative layout shift so far, and what moved. */
    shifts: { sum: number; what: string[] };
  }
}

function watchShifts() {
  window.shifts = { sum: 0, what: [] };
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & {
      value: number;
      hadRecentInput: boolean;
      sources: { node: Node | null }[];
    })[]) {
      if (entry.hadRecentInput) continue;
      window.shifts.sum += entry.value;
      for (const { node } of entry.sources) {
        const element = node instanceof Element ? node : node?.parentElement;
        window.shifts.what.push(`${entry.value.toFixed(4)} ${element?.outerHTML.slice(0, 80)}`);
      }
    }
  }).observe({ type: 'layout-shift', buffered: true });
}

/** By how many pixels the page scrolls sideways, and which elements stick out of it then. */
const sideways = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const by = scrollWidth - clientWidth;
    const sticksOut = (element: Element) => element.getBoundingClientRect().right > clientWidth + 1;
    const elements = by > 0 ? [...document.body.querySelectorAll('*')].filter(sticksOut) : [];
    return { by, elements: elements.map((element) => element.outerHTML.slice(0, 100)) };
  });
const still = { by: 0, elements: [] };

describe.each(pages())('/%s', (path) => {
  test('loads without a complaint, from its own origin, within its weight, and stands still', async () => {
    const origin = inject('origin');
    const visit = await open(browser, origin + path, { viewport: phone, before: watchShifts });
    const { page, responses, requests, problems } = visit;
    const codeAtFirst = await scriptBytes(page, responses);
    await scrollThrough(page);
    const codeAtLast = await scriptBytes(page, responses);

    expect(problems).toEqual([]);
    expect(requests.filter((url) => !/^(data|blob):/.test(url) && !url.startsWith(origin))).toEqual(
      [],
    );
    expect(codeAtFirst).toBeLessThanOrEqual(45 * kilobyte);
    expect(codeAtLast).toBeLessThanOrEqual(90 * kilobyte);
    expect(await fontBytes(responses)).toBeLessThanOrEqual(60 * kilobyte);
    const { sum, what } = await page.evaluate(() => window.shifts);
    expect(sum, what.join('\n')).toBeLessThan(0.02);
    expect(await sideways(page)).toEqual(still);
    await visit.close();
  });

  test('does not scroll sideways on a small phone', async () => {
    const url = inject('origin') + path;
    const { page, close } = await open(browser, url, { viewport: smallPhone });
    await scrollThrough(page);
    expect(await sideways(page)).toEqual(still);
    await close();
  });
});
