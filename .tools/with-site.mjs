/** Builds the site, serves it and opens a browser for a task; closes all when it ends, well or not. */
import { join } from 'node:path';

import { launch } from '../tests/site/kit.ts';
import { ensureBrowser } from './browser.mjs';
import { serve } from './serve.mjs';
import { Advice, root, tool } from './toolchain.mjs';

/** @param {(browser: import('playwright-core').Browser, url: string) => Promise<void>} task */
export async function withSite(task) {
  await ensureBrowser();
  if ((await tool('astro', ['build', '--silent'])) !== 0) {
    throw new Advice('The site could not be built; see above.');
  }
  const server = await serve({ folder: join(root, 'dist') });
  try {
    const browser = await launch();
    try {
      await task(browser, server.url);
    } finally {
      await browser.close();
    }
  } finally {
    await server.close();
  }
}
