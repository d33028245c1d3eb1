/** What axe finds on a page: barriers for those who don't see, hear or point as most do. */
import type { AxeResults, RunOptions } from 'axe-core';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const script = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

declare global {
  interface Window {
    axe?: { run: (what: { exclude: Element[] }, options: RunOptions) => Promise<AxeResults> };
  }
}

/** Rules that judge what only colours decide; all others come out alike in light and dark. */
const colourRules = ['color-contrast', 'link-in-text-block'];

/** What axe finds at the page's present size and colours. */
async function barriers(page: Page, where: string, rules?: readonly string[]): Promise<string[]> {
  const options: RunOptions = {
    // Of what holds, one element a rule is enough: the long list of all of them takes most of the time.
    resultTypes: ['violations'],
    ...(rules && { runOnly: { type: 'rule', values: [...rules] } }),
  };
  const { held, found } = await page.evaluate(async (given) => {
    if (!window.axe) throw new Error('axe is not on the page');
    // What an equation draws is hidden from those who hear it and stands in the ink of its text, unless a part of it is live.
    const equations = [...document.querySelectorAll('.katex-html')].filter(
      (each, i) => i > 0 && !each.querySelector('.live'),
    );
    const { violations, passes } = await window.axe.run({ exclude: equations }, given);
    return {
      held: passes.length,
      found: violations.flatMap(({ id, nodes }) =>
        nodes.map(({ html, any }) => `${id}: ${html.slice(0, 160)} ${any[0]?.message ?? ''}`),
      ),
    };
  }, options);
  if (held === 0) throw new Error('axe has judged nothing');
  return found.map((each) => `${where}, ${each}`);
}

/** How a page is looked at: its size and colours, and whether all rules are tried or those alone that colours decide. */
export interface Look {
  size: { width: number; height: number };
  scheme: 'light' | 'dark';
  colours?: 'alone';
}

/** Judges the page at each look, and leaves it light. */
export async function barriersAt(page: Page, looks: readonly Look[]): Promise<string[]> {
  await page.evaluate(script);
  // The paper's grid, as faint as it is, keeps axe from judging any text that stands on it.
  await page.evaluate(() => document.body.style.setProperty('background-image', 'none'));
  const found: string[] = [];
  for (const { size, scheme, colours } of looks) {
    await page.setViewportSize(size);
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
    found.push(...(await barriers(page, `${scheme}, ${size.width} px`, colours && colourRules)));
  }
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await page.evaluate(() => document.body.style.removeProperty('background-image'));
  return found;
}
