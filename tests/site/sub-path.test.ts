import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

import { serve } from '../../.tools/serve.mjs';
import { tool } from '../../.tools/toolchain.mjs';
import { browser } from './browser.ts';
import { open, scrollThrough } from './kit.ts';
import { htmlOf, pages, root } from './pages.ts';

const base = '/sub/path/';
const folder = join('.cache', 'sub-path');

let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  // The variables that the test runner sets would change what is built.
  const runner = ['BASE_URL', 'DEV', 'MODE', 'PROD', 'SSR', 'TEST', 'VITEST'];
  const unset = Object.fromEntries(runner.map((name) => [name, undefined]));
  const env = { ...unset, NODE_ENV: 'production', SITE_BASE: base, SITE_OUT: folder };
  expect(await tool('astro', ['build', '--silent'], { env })).toBe(0);
  server = await serve({ folder: join(root, folder), base });
});
afterAll(async () => {
  await server?.close();
});

test('no address in the files leads out of the sub-path', () => {
  const attribute = /\s(?:href|src|component-url|renderer-url)="(\/[^"]*)"/g;
  const outside = pages().flatMap((path) =>
    [...htmlOf(path, folder).matchAll(attribute)]
      .map(([, address = '']) => address)
      .filter((address) => !address.startsWith(base))
      .map((address) => `/${path} -> ${address}`),
  );
  expect(outside).toEqual([]);
});

// One page of each kind: what a script asks for, each kind asks for in one way.
test.each(['', 'bench/', 'course/three-things-set-the-pull/', 'reference/frets/', 'sources/'])(
  '/%s works below a sub-path',
  async (path) => {
    const { page, problems, requests, close } = await open(browser, server.url + path);
    await scrollThrough(page);
    const links = await page.evaluate(() => [...document.links].map((link) => link.href));
    await close();
    const host = new URL(server.url).origin;
    const outside = [...links, ...requests].filter(
      (url) => url.startsWith(host) && !url.startsWith(server.url),
    );
    expect(problems).toEqual([]);
    expect(outside).toEqual([]);
  },
);
