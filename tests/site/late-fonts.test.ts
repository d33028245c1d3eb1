/** Nothing jumps, however late fonts and scripts come and whatever the device has in place of the site's own faces. */
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, open, phone, type View } from './kit.ts';
import { watchShifts } from './shifts.ts';

const LATE = 700;

const late = (what: RegExp): View => ({ late: { what, by: LATE } });
/** Every face of the page in one that every device has, drawn so much wider or narrower. */
const standIn = (width: number): View => ({
  sheet: `@font-face { font-family: 'Stand-in'; src: local('DejaVu Sans'), local('Arial'), local('Helvetica'); size-adjust: ${width}%; }
    :root { --serif: 'Newsreader', 'Stand-in', sans-serif; --sans: 'Barlow', 'Stand-in', sans-serif; }`,
});

const cases: readonly (readonly [string, View])[] = [
  ['fonts come late', late(/\.woff2/)],
  ['scripts come late', late(/\.js$/)],
  ['fonts and scripts come late to three device pixels', { ...late(/\.(woff2|js)$/), density: 3 }],
  ['a much wider face stands in', { ...late(/\.woff2/), ...standIn(125) }],
  ['a much narrower face stands in', { ...late(/\.woff2/), ...standIn(75) }],
];

test.each(cases)('no page jumps while %s', async (_, view) => {
  for (const path of ['', 'bench/', 'course/speaking-length/']) {
    for (const viewport of [phone, desktop]) {
      const { page, close } = await open(browser, inject('origin') + path, {
        ...view,
        viewport,
        before: watchShifts,
      });
      const { sum, what } = await page.evaluate(() => window.shifts);
      await close();
      expect(sum, `/${path} at ${viewport.width} px: ${what.join('\n')}`).toBe(0);
    }
  }
});
