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
  test.each([
    { colorScheme: 'light', viewport: phone },
    { colorScheme: 'dark', viewport: phone },
    { colorScheme: 'light', viewport: desktop },
    { colorScheme: 'dark', viewport: desktop },
  ] as const)('has no barrier in $colorScheme at $viewport.width px', async (view) => {
    const { page, close } = await open(browser, inject('origin') + path, view);
    await scrollThrough(page);
    const { violations, passes } = await new AxeBuilder({ page }).analyze();
    const barriers = violations.map(
      ({ id, nodes }) => `${id}: ${nodes[0]?.html} (${nodes.length})`,
    );
    expect(barriers).toEqual([]);
    expect(passes.length).toBeGreaterThan(0);
    await close();
  });
});
