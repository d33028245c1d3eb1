import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

import { desktop, launch, open, phone } from './kit.ts';
import { watchShifts } from './shifts.ts';

const LATE = 500;

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

test.each(['', 'bench/', 'course/speaking-length/'])(
  '/%s stands still while its fonts come late',
  async (path) => {
    for (const viewport of [phone, desktop]) {
      const { page, close } = await open(browser, inject('origin') + path, {
        viewport,
        before: watchShifts,
        late: { what: /\.woff2/, by: LATE },
      });
      const { sum, what } = await page.evaluate(() => window.shifts);
      await close();
      expect(sum, `${viewport.width} px: ${what.join('\n')}`).toBeLessThan(0.02);
    }
  },
);
