import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';

import { builtFiles, buildWorker } from '../../.tools/offline.mjs';
import { serve } from '../../.tools/serve.mjs';
import { launch, open, scrollThrough, sliderValue, type Visit } from './kit.ts';
import { dist, pages } from './pages.ts';

const folder = mkdtempSync(join(tmpdir(), 'speaking-length-offline-'));

let server: Awaited<ReturnType<typeof serve>>;
let visit: Visit;
/** A browser of its own: a worker that waits for a busy one may wait for ever. */
let browser: Browser;
/** A build of its own, since it is changed. To keep the whole site takes long, so both tests go on from one visit. */
beforeAll(async () => {
  cpSync(dist, folder, { recursive: true });
  server = await serve({ folder });
  browser = await launch();
  visit = await open(browser, server.url, { offline: true });
  await kept(visit.page);
});
afterAll(async () => {
  await browser.close();
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Waits until the worker has the whole site and the page. */
const kept = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller)
      await new Promise((done) =>
        navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }),
      );
  });

let builds = 0;

test('a changed build waits, is offered, and then replaces the old one whole', async () => {
  builds += 1;
  const home = join(folder, 'index.html');
  writeFileSync(home, readFileSync(home, 'utf8').replaceAll('</h1>', `, anew ${builds}</h1>`));
  await buildWorker(folder);
  const { page } = visit;
  const title = () => page.locator('h1').innerText();
  const old = await title();
  await page.reload();
  expect(await title()).toBe(old);
  await page.getByRole('button', { name: 'Load it' }).click();
  await expect.poll(title, { timeout: 30_000 }).toContain(`, anew ${builds}`);
  const entries = await page.evaluate(async () => {
    const names = await caches.keys();
    const all = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return all.flat().length;
  });
  expect(entries).toBe(builtFiles(folder).length);
});

test('after one visit every page opens with the server gone, and its figures move', async () => {
  await server.close();
  const { page, problems } = visit;
  const paths = pages().filter((each) => each !== '404.html');
  const kept = await page.evaluate(
    (all) =>
      Promise.all(
        all.map(async (path) => {
          const answer = await fetch(path);
          return { path, status: answer.status, length: (await answer.text()).length };
        }),
      ),
    paths,
  );
  for (const { path, status, length } of kept) {
    expect(status, path).toBe(200);
    expect(length, path).toBe(readFileSync(join(folder, path, 'index.html'), 'utf8').length);
  }
  // One page of each kind, as a reader would open it.
  for (const path of ['bench/', 'course/', 'glossary/', 'reference/frets/']) {
    await page.goto(server.url + path, { waitUntil: 'load' });
    expect(await page.title(), path).toContain('Speaking Length');
  }
  await page.goto(`${server.url}course/three-things-set-the-pull/?from=a-letter`);
  await scrollThrough(page);
  const handle = page.getByRole('slider').first();
  const before = await sliderValue(handle);
  await handle.press('ArrowLeft');
  expect((await sliderValue(handle)).now).toBeLessThan(before.now);
  // The browser asks for its tab's icon past the worker.
  expect(problems.filter((each) => !each.includes('favicon'))).toEqual([]);
});
