/** Closes what a file of tests has left open in the browser that it shares with the next. */
import { afterAll } from 'vitest';

import { browser } from './browser.ts';

afterAll(async () => {
  for (const context of browser.contexts()) await context.close();
});
