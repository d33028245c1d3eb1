import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

import { desktop, launch, open, phone, scrollThrough } from './kit.ts';
import { pages } from './pages.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** Rules that judge what only colours decide; all others come out alike in light and dark. */
const colourRules = ['color-contrast', 'link-in-text-block'];

/** What axe finds at the page's present size and colours; `rules` narrows it down. */
async function barriers(page: Page, where: string, rules?: readonly string[]): Promise<string[]> {
  // The legacy mode needs no second page; it differs for frames of other origins only, and there are none.
  const axe = new AxeBuilder({ page }).setLegacyMode(true).options({
    // Of what holds, one element a rule is enough: the long list of all of them takes most of the time.
    resultTypes: ['violations'],
    ...(rules && { runOnly: { type: 'rule', values: [...rules] } }),
  });
  const { violations, passes } = await axe.analyze();
  expect(passes.length).toBeGreaterThan(0);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, any }) => `${where}, ${id}: ${html.slice(0, 160)} ${any[0]?.message ?? ''}`),
  );
}

test.each(pages())('/%s has no barrier, narrow or wide, light or dark', async (path) => {
  const { page, close } = await open(browser, inject('origin') + path, { viewport: phone });
  await scrollThrough(page);
  // The paper's grid, as faint as it is, keeps axe from judging any text that stands on it.
  await page.evaluate(() => document.body.style.setProperty('background-image', 'none'));
  const found: string[] = [];
  for (const viewport of [phone, desktop]) {
    await page.setViewportSize(viewport);
    await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
    found.push(...(await barriers(page, `light, ${viewport.width} px`)));
    await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
    found.push(...(await barriers(page, `dark, ${viewport.width} px`, colourRules)));
  }
  expect(found).toEqual([]);
  await close();
});
