/** A link may come from anywhere: whatever it carries, the page stands, and nothing of it becomes part of the page. */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, hydrated, open, scrollThrough } from './kit.ts';

const mark = '<b class="got">x</b><img class="got" src="x" onerror="window.got=1">';
const codes = (text: string): string =>
  Array.from(text, (c) => `.${(c.codePointAt(0) ?? 0).toString(16)}.`).join('');
const strings = 'e4-p10/b3-p13/g3-p17/d3-w26';

const hostile = [
  `v1/n-${mark}/l-647.7/${strings}`,
  `v1/n-${encodeURIComponent(mark)}/l-647.7/${strings}`,
  `v1/n-${codes('<b class="got">')}/l-647.7/${strings}`,
  `v1/n-${codes('<script>got=1</script>')}/${strings}/to/n-${codes('<svg onload=got=1>')}/${strings}`,
  `"><script class="got">window.got=1</script>`,
  'javascript:window.got=1',
  'v1/__proto__/constructor-prototype/u-__proto__/s-toString/m-valueOf/__proto__.got-1',
  '__proto__[got]=1&constructor[prototype][got]=1',
  'v1/n-%E2%28%A1%C0%AF%/l-%ED%A0%80/%%%/' + strings,
  'v1/n-.d800..dfff..110000..0./l-1e999/a-NaN/f--Infinity/ts-1e9/' + strings,
  `v1/l-647.7/${'e4-p10/'.repeat(20_000)}`,
  `v1/n-${'%F0%9F%92%A9'.repeat(20_000)}`,
  `v99/n-${mark}`,
  '*,body,:not(x),[onerror=got]',
] as const;

/** What is wrong with a page that was opened by a hostile link. */
const harm = (page: Page) =>
  page.evaluate(() => {
    const text = document.querySelector('main')?.innerText ?? '';
    return [
      'got' in window && 'window.got is set',
      'got' in {} && 'every object has got something',
      document.querySelector('.got, [onerror], [onload]') &&
        'markup of the link stands in the page',
      !document.querySelector('h1')?.checkVisibility() && 'the page has no heading',
      /\b(NaN|Infinity|undefined|\[object)/.exec(text)?.[0],
      document.documentElement.scrollWidth > innerWidth && 'the page scrolls sideways',
    ].filter(Boolean);
  });

test.each([
  '',
  'bench/',
  'course/',
  'course/three-things-set-the-pull/',
  'reference/frets/',
  'glossary/',
  '404.html',
])('/%s stands, whatever its link carries', async (path) => {
  const [first, ...others] = hostile;
  const { page, problems, close } = await open(browser, `${inject('origin')}${path}#${first}`, {
    viewport: desktop,
  });
  await scrollThrough(page);
  expect(await harm(page), first).toEqual([]);
  const title = await page.title();
  for (const link of others) {
    await page.evaluate((hash) => void (location.hash = hash), link);
    // The reader of links comes by itself, and what it reads is drawn in the next frame.
    await page.evaluate(() => new Promise((done) => setTimeout(done, 60)));
    expect(await harm(page), link.slice(0, 80)).toEqual([]);
  }
  expect(await page.title()).toBe(title);
  expect(problems).toEqual([]);
  await close();
});

// By the address itself, when nothing has been read before: one of each sort.
const opened = hostile.filter((_, i) => i % 4 === 0);

test.each(opened.map((link) => [link.slice(0, 40), link]))(
  'the bench opens by %s',
  async (_, link) => {
    const { page, problems, close } = await open(browser, `${inject('origin')}bench/#${link}`, {
      viewport: desktop,
    });
    await scrollThrough(page);
    await hydrated(page);
    expect(await harm(page)).toEqual([]);
    expect(await page.locator('.stringing tbody tr').count()).toBeGreaterThanOrEqual(4);
    expect(problems).toEqual([]);
    await close();
  },
);
