/**
 * `npm run bench -- start`: what a page costs until it stands: code, blocking, the largest paint, shifts; and what the first sign of a
 * reader costs, at which what is in sight comes alive. Each page is loaded nine times
 * with the processor slowed, every second load being a plain page of the same weight: the same text, styles, fonts and
 * bytes of script, of which nothing runs. What the machine does beside weighs on both, so the ratios say more than the milliseconds.
 */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { serve } from '../../.tools/serve.mjs';
import { phone } from '../site/kit.ts';
import { scriptBytes } from '../site/weights.ts';
import { quantile } from './drag.mjs';
import { record } from './trace.mjs';

const slowdown = 4;
const loads = 9;
/** A task that takes longer keeps a finger waiting, ms. */
const task = 50;
const categories = ['devtools.timeline', 'disabled-by-default-devtools.timeline'];

/** Runs before the page: notes its largest paint and its shifts. */
function watch() {
  window.start = { lcp: 0, cls: 0 };
  new PerformanceObserver((list) => {
    for (const { startTime } of list.getEntries()) window.start.lcp = startTime;
  }).observe({ type: 'largest-contentful-paint', buffered: true });
  new PerformanceObserver((list) => {
    for (const { value } of list.getEntries()) window.start.cls += value;
  }).observe({ type: 'layout-shift', buffered: true });
}

const isScript = (request) => request.resourceType() === 'script';
const inert = (code) => `/*${code.replaceAll('*/', '* ')}*/`;

/** The page's text with scripts that do nothing, those included which its own scripts would ask for. */
function plain(html, scripts) {
  const still = html
    .replaceAll(/<script[^>]* src="[^"]*"[^>]*><\/script>/g, '')
    .replaceAll(
      /(<script[^>]*>)([\s\S]*?)(<\/script>)/g,
      (_, begin, code, end) => begin + inert(code) + end,
    );
  const asked = scripts.map((path) => `<script async src="${path}"></script>`).join('');
  return still.replace('</head>', `${asked}</head>`);
}

/** A copy of the built site whose scripts do nothing. */
function copyWithoutScripts(folder) {
  const copy = mkdtempSync(join(tmpdir(), 'plain-'));
  cpSync(folder, copy, { recursive: true });
  for (const file of readdirSync(copy, { recursive: true, encoding: 'utf8' }))
    if (file.endsWith('.js'))
      writeFileSync(join(copy, file), inert(readFileSync(join(copy, file), 'utf8')));
  return copy;
}

/** How long the main thread's tasks were, ms of its own time on the processor. */
function tasks(trace) {
  // The empty page before it may have had a process of its own.
  const paint = trace.findLast(({ name }) => name === 'Layout' || name === 'UpdateLayoutTree');
  return trace
    .filter(({ name, pid, tid }) => name === 'RunTask' && pid === paint?.pid && tid === paint.tid)
    .map(({ tdur = 0 }) => tdur / 1000);
}

/** Milliseconds by which they were too long. */
const blocking = (trace) => tasks(trace).reduce((sum, each) => sum + Math.max(0, each - task), 0);
const longest = (trace) => Math.max(0, ...tasks(trace));

async function load(browser, url) {
  const context = await browser.newContext({
    viewport: phone,
    hasTouch: true,
    serviceWorkers: 'block',
    // The plain page's scripts are others than those that the page permits.
    bypassCSP: true,
  });
  const page = await context.newPage();
  const responses = [];
  page.on('response', (response) => responses.push(response));
  await page.addInitScript(watch);
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  const trace = await record(
    session,
    async () => {
      await page.goto(url, { waitUntil: 'networkidle' });
      await page.evaluate(() => new Promise((done) => setTimeout(done, 500)));
    },
    categories,
  );
  const code = await scriptBytes(page, responses);
  const scripts = responses
    .filter((each) => isScript(each.request()))
    .map((each) => new URL(each.url()).pathname);
  const sign = await record(
    session,
    async () => {
      await page.keyboard.press('Shift');
      await page.evaluate(() => new Promise((done) => setTimeout(done, 2000)));
    },
    categories,
  );
  const seen = await page.evaluate(() => window.start);
  const result = {
    ...seen,
    blocked: blocking(trace),
    blockedAfter: blocking(sign),
    longest: longest(sign),
    code,
    codeAfter: await scriptBytes(page, responses),
    scripts,
  };
  await context.close();
  return result;
}

const median = (list, what) =>
  quantile(
    list.map((each) => each[what]),
    0.5,
  );
const rounded = (number, digits) => Number(number.toFixed(digits));

/** Prints the table for these pages of the site that is built in `folder`, given by their addresses. */
export async function benchStart(browser, folder, paths) {
  const copy = copyWithoutScripts(folder);
  const site = await serve({ folder });
  const still = await serve({ folder: copy });
  const rows = {};
  for (const path of paths) {
    // What a first visit compiles stays out of the nine.
    const { scripts } = await load(browser, site.url + path);
    const text = join(path, 'index.html');
    writeFileSync(join(copy, text), plain(readFileSync(join(folder, text), 'utf8'), scripts));
    const own = [];
    const bare = [];
    for (let i = 0; i < loads; i += 1)
      if (i % 2 === 0) own.push(await load(browser, site.url + path));
      else bare.push(await load(browser, still.url + path));
    rows[`/${path}`] = {
      'kB of code': rounded(median(own, 'code') / 1000, 1),
      'of a plain page': rounded(median(bare, 'code') / 1000, 1),
      'blocking ms': rounded(median(own, 'blocked'), 0),
      'plain blocking ms': rounded(median(bare, 'blocked'), 0),
      'kB after the first sign': rounded(median(own, 'codeAfter') / 1000, 1),
      'blocking ms then': rounded(median(own, 'blockedAfter'), 0),
      'longest task then': rounded(median(own, 'longest'), 0),
      'LCP ms': rounded(median(own, 'lcp'), 0),
      'times a plain page': rounded(median(own, 'lcp') / median(bare, 'lcp'), 2),
      CLS: rounded(median(own, 'cls'), 3),
    };
  }
  await site.close();
  await still.close();
  rmSync(copy, { recursive: true });
  console.log(
    `What a page costs until it stands, at 390 x 844, processor slowed ${slowdown} times, medians of ${loads} loads in turn`,
  );
  console.table(rows);
}
