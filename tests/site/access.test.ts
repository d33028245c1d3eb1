import AxeBuilder from '@axe-core/playwright';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';

import { desktop, launch, open, phone, scrollThrough } from './kit.ts';
import { pages } from './pages.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

describe.each(pages())('/%s', (path) => {
  test.each([phone, desktop])('has no barrier at $width px, light or dark', async (viewport) => {
    const { page, close } = await open(browser, inject('origin') + path, { viewport });
    await scrollThrough(page);
    const barriers: string[] = [];
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      // The legacy mode needs no second page; it differs for frames of other origins only, and there are none.
      const { violations, passes } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
      expect(passes.length).toBeGreaterThan(0);
      for (const { id, nodes } of violations) {
        for (const { html, any } of nodes) {
          barriers.push(`${colorScheme}, ${id}: ${html.slice(0, 160)} ${any[0]?.message ?? ''}`);
        }
      }
    }
    expect(barriers).toEqual([]);
    await close();
  });
});
