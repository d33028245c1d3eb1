/** Nothing jumps for what a link brings along: a notice that it can't be read, and an instrument that goes from page to page. */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { fourExamples } from '../figures/four-examples.ts';
import { browser } from './browser.ts';
import { desktop, open, phone, quiet, touch } from './kit.ts';
import { watchShifts } from './shifts.ts';

const LATE = 700;

/** Each page narrow and wide. */
const looks = ['', 'bench/', 'course/speaking-length/'].flatMap((path) =>
  [phone, desktop].map((viewport) => ({ path, viewport })),
);
const onPhone = looks.filter(({ viewport }) => viewport === phone);

// The notice has one place and one shape: a wide screen is tried with one of them.
test.each([
  ['cannot be read', 'v99/n-Knot/l-647.7', looks],
  ['says nothing that a page knows', 'v1/%%%/l-x', onPhone],
  ['says a length that no instrument has', 'v1/n-Knot/l-1e9/e4-p10/b3-p13/g3-p17/d3-w26', onPhone],
])(
  'no page moves for the notice that its link %s, however late that comes',
  async (_, link, at) => {
    const found = await Promise.all(
      at.map(async ({ path, viewport }) => {
        const url = `${inject('origin')}${path}#${link}`;
        const { page, close } = await open(browser, url, {
          late: { what: /\.js$/, by: LATE },
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
  },
);

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

/** An instrument that comes along, and the screen that it comes along on. */
const walks = [longNamed, fourExamples[1]?.[1] ?? initialState].flatMap((state) =>
  [phone, desktop].map((viewport) => ({ state, viewport })),
);

test('no page moves that is reached from another one with an instrument of the reader’s own, while scripts come late', async () => {
  // Most of the time all of them wait.
  await Promise.all(
    walks.map(async ({ state, viewport }) => {
      const { page, close } = await open(browser, `${inject('origin')}#${encode(state)}`, {
        // Four pages one after the other: late enough for each to be seen without its scripts.
        late: { what: /\.js$/, by: LATE / 3 },
        viewport,
        before: watchShifts,
      });
      const { name } = state.mine;
      const look = async (): Promise<void> => {
        await named(page, name);
        const { sum, what } = await page.evaluate(() => window.shifts);
        const where = `${name}, ${new URL(page.url()).pathname} at ${viewport.width} px`;
        expect(sum, `${where}: ${what.join('\n')}`).toBe(0);
      };
      await look();
      for (const link of [
        'main a[href*="/three-things"]',
        'a[rel="next"].next',
        'a[rel="next"].next',
      ]) {
        await follow(page, link);
        await look();
      }
      await quiet(page);
      await close();
    }),
  );
});

test('a reader who goes on before any script has come takes a link’s instrument along', async () => {
  const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
  const page = await context.newPage();
  let held = true;
  await page.route(/\.js$/, (route) => (held ? undefined : route.continue()));
  await page.goto(`${inject('origin')}course/pitch/#${encode(longNamed)}/at-the-octave`, {
    waitUntil: 'commit',
  });
  await page.locator('a[rel="next"].next').first().waitFor();
  held = false;
  await page.locator('a[rel="next"].next').first().click();
  await page.waitForURL(/gauge-and-mass/);
  expect(new URL(page.url()).hash).toBe(`#${encode(longNamed)}`);
  await named(page, longNamed.mine.name);
  await context.close();
});
