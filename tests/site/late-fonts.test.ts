/** Nothing jumps, however late fonts and scripts come and whatever the device has in place of the site's own faces. */
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, open, phone, type View } from './kit.ts';
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
