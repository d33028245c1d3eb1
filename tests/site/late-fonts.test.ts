/** Nothing jumps, however late fonts and scripts come and whatever the device has in place of the site's own faces. */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { fourExamples } from '../figures/four-examples.ts';
import { browser } from './browser.ts';
import { desktop, open, phone, quiet, touch, type View } from './kit.ts';
import { watchShifts } from './shifts.ts';

const LATE = 700;

const late = (what: RegExp): View => ({ late: { what, by: LATE } });

const cases: readonly (readonly [string, View])[] = [
  ['fonts come late', late(/\.woff2/)],
  ['scripts come late', late(/\.js$/)],
  ['fonts and scripts come late to three device pixels', { ...late(/\.(woff2|js)$/), density: 3 }],
  ['a much wider face stands in', { ...late(/\.woff2/), standIn: 125 }],
  ['a much narrower face stands in', { ...late(/\.woff2/), standIn: 75 }],
];

/** Each page narrow and wide. */
const looks = ['', 'bench/', 'course/speaking-length/'].flatMap((path) =>
  [phone, desktop].map((viewport) => ({ path, viewport })),
);

test.each(cases)('no page jumps while %s', async (_, view) => {
  // Most of the time all of them wait.
  const found = await Promise.all(
    looks.map(async ({ path, viewport }) => {
      const url = inject('origin') + path;
      const { page, close } = await open(browser, url, { ...view, viewport, before: watchShifts });
      const { sum, what } = await page.evaluate(() => window.shifts);
      const loaded = await page.evaluate(() =>
        [...document.fonts]
          .filter(({ status }) => status === 'loaded')
          .map(({ family }) => family.replaceAll(/["']/g, '')),
      );
      await close();
      return { where: `/${path} at ${viewport.width} px`, sum, what, loaded };
    }),
  );
  for (const { where, sum, what, loaded } of found) {
    expect(loaded, where).toContain('Newsreader');
    expect(loaded.includes('Stand-in'), where).toBe('standIn' in view);
    expect(sum, `${where}: ${what.join('\n')}`).toBe(0);
  }
});

test.each([
  ['cannot be read', 'v99/n-Knot/l-647.7'],
  ['says nothing that a page knows', 'v1/%%%/l-x'],
  ['says a length that no instrument has', 'v1/n-Knot/l-1e9/e4-p10/b3-p13/g3-p17/d3-w26'],
])('no page moves for the notice that its link %s, however late that comes', async (_, link) => {
  const found = await Promise.all(
    looks.map(async ({ path, viewport }) => {
      const url = `${inject('origin')}${path}#${link}`;
      const { page, close } = await open(browser, url, {
        ...late(/\.js$/),
        viewport,
        before: watchShifts,
      });
      const notice = page.locator('.notice');
      // Some links are read only once somebody turns to the bar.
      await page.getByRole('region', { name: 'Your instrument' }).dispatchEvent('click');
      await expect.poll(() => notice.textContent()).not.toBe('');
      const box = await notice.boundingBox();
      const { sum, what } = await page.evaluate(() => window.shifts);
      const where = `/${path} at ${viewport.width} px`;
      await notice.getByRole('button', { name: 'Dismiss' }).click();
      await expect.poll(() => notice.isVisible(), { message: where }).toBe(false);
      await close();
      return { where, sum, what, ends: box && box.y + box.height, room: viewport.height };
    }),
  );
  for (const { where, sum, what, ends, room } of found) {
    expect(sum, `${where}: ${what.join('\n')}`).toBe(0);
    // It lies in sight, wherever the page stands.
    expect(ends, where).toBeLessThan(room);
  }
});

/** A name that is long, two scales and millimetres: no instrument has more to say in a page's bar. */
const longNamed = {
  ...initialState,
  units: 'mm-kg',
  mine: {
    ...initialState.mine,
    name: 'Grandmother’s old parlour guitar',
    scale: { treble: 0.6285, bass: 0.6985 },
  },
} as const;

/** Waits until the page's bar is alive, so that links carry the instrument, and names it. */
async function named(page: Page, name: string): Promise<void> {
  await page.waitForFunction(
    (called) => {
      const bar = document.querySelector('[aria-label="Your instrument"]');
      return !bar?.closest('astro-island[ssr]') && bar?.textContent.includes(called);
    },
    name,
    { timeout: 60_000 },
  );
  await touch(page);
}

/** Follows a link of the page, as a reader does. */
async function follow(page: Page, link: string): Promise<void> {
  const { pathname } = new URL(page.url());
  await page.locator(link).first().click();
  await page.waitForURL((url) => url.pathname !== pathname, { waitUntil: 'load' });
}

test.each([
  ['a long name', longNamed],
  ['another kind of instrument', fourExamples[1]?.[1] ?? initialState],
] as const)(
  'no page moves that is reached from another one with %s, while scripts come late',
  async (_, state) => {
    await Promise.all(
      [phone, desktop].map(async (viewport) => {
        const { page, close } = await open(browser, `${inject('origin')}#${encode(state)}`, {
          // Four pages one after the other: late enough for each to be seen without its scripts.
          late: { what: /\.js$/, by: LATE / 3 },
          viewport,
          before: watchShifts,
        });
        const look = async (): Promise<void> => {
          const { sum, what } = await page.evaluate(() => window.shifts);
          const { pathname } = new URL(page.url());
          expect(sum, `${pathname} at ${viewport.width} px: ${what.join('\n')}`).toBe(0);
        };
        const links = [
          'main a[href*="/three-things"]',
          ...Array<string>(2).fill('a[rel="next"].next'),
        ];
        for (const link of links) {
          await named(page, state.mine.name);
          await look();
          await follow(page, link);
        }
        await named(page, state.mine.name);
        await look();
        await quiet(page);
        await close();
      }),
    );
  },
);
