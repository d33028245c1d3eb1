/**
 * `npm run bench`: what the physics costs, what a drag costs on a phone-sized page with the processor slowed four times, and what each page
 * weighs. It prints and judges nothing. `npm run bench -- course/pitch/ bench/` looks at these pages only, `npm run bench --
 * build` at how the time of a build grows, `npm run bench -- start` at what a page costs until it stands, `npm run bench -- book`
 * at finding one of 300 instruments, `npm run bench -- listen` at how long a page is held up while it listens.
 */
import { main } from '../../.tools/toolchain.mjs';
import { withSite } from '../../.tools/with-site.mjs';
import { open, phone, scrollThrough, touch } from '../site/kit.ts';
import { dist, htmlOf, pages } from '../site/pages.ts';
import { fontBytes, htmlBytes, scriptBytes, styleBytes } from '../site/weights.ts';
import { barePage } from './bare.mjs';
import { benchDrag } from './drag.mjs';
import { benchFind } from './find.mjs';
import { benchFrames } from './frames.mjs';
import { benchGrowth } from './growth.mjs';
import { benchListen } from './listen.mjs';
import { benchPhysics } from './physics.mjs';
import { benchStart } from './start.mjs';

const handlesPerPage = 8;
const kilobytes = (bytes) => Number((bytes / 1000).toFixed(1));
const rounded = (number) => (Number.isFinite(number) ? Number(number.toFixed(2)) : '');

async function dragRows(page, path, bare) {
  const rows = {};
  const handles = await page.locator('[role=slider]:visible').all();
  for (const [index, handle] of handles.slice(0, handlesPerPage).entries()) {
    const name = await handle.evaluate((element) => {
      const labels = element.getAttribute('aria-labelledby')?.split(' ') ?? [];
      const texts = labels.map((id) => document.getElementById(id)?.textContent ?? '');
      return element.getAttribute('aria-label') ?? texts.join(' ');
    });
    const cost = await benchDrag(handle, bare);
    if (!cost) continue;
    rows[`/${path} ${index + 1} ${name.trim()}`.slice(0, 60)] = {
      events: rounded(cost.events),
      'median ms': rounded(cost.median),
      'times a bare page': rounded(cost.times),
      'on average': rounded(cost.timesOnAverage),
      'p95 ms': rounded(cost.p95),
      'of it layout ms': rounded(cost.layout),
      'with paint ms': rounded(cost.withPaint),
      'times with paint': rounded(cost.timesWithPaint),
      'with paint on average': rounded(cost.timesWithPaintOnAverage),
      'next frame ms': rounded(cost.frame),
      mutations: rounded(cost.mutations),
      'most mutations': cost.mostMutations,
      'forced layouts': rounded(cost.forced),
    };
  }
  return rows;
}

await main(() => {
  const asked = process.argv.slice(2);
  if (asked[0] === 'build') return benchGrowth();
  if (asked[0] === 'book') return withSite(benchFind);
  if (asked[0] === 'listen') {
    benchListen();
    return withSite((_, home) => benchFrames(home));
  }
  if (asked[0] === 'start')
    return withSite((browser) => {
      const named = asked.slice(1);
      const usual = pages().filter((path) => path === '' || /^(bench|course\/[^/]+)\/$/.test(path));
      return benchStart(browser, dist, named.length > 0 ? named : usual);
    });
  if (asked.length === 0) {
    benchPhysics();
    benchListen();
  }
  return withSite(async (browser, home) => {
    const weights = {};
    const drags = {};
    const still = await open(browser, 'about:blank', { viewport: phone });
    const bare = await barePage(still.page);
    for (const path of asked.length > 0 ? asked : pages()) {
      const { page, responses, close } = await open(browser, home + path, {
        viewport: phone,
        untouched: true,
      });
      const codeAtFirst = await scriptBytes(page, responses);
      await touch(page);
      const codeInHand = await scriptBytes(page, responses);
      await scrollThrough(page);
      weights[`/${path}`] = {
        page: kilobytes(htmlBytes(htmlOf(path))),
        styles: kilobytes(await styleBytes(responses)),
        'code at first': kilobytes(codeAtFirst),
        'code in hand': kilobytes(codeInHand),
        'code at the end': kilobytes(await scriptBytes(page, responses)),
        fonts: kilobytes(await fontBytes(responses)),
      };
      Object.assign(drags, await dragRows(page, path, bare));
      await close();
    }
    await still.close();
    console.log('What each page weighs, in kB, compressed with gzip (fonts as they are)');
    console.table(weights);
    console.log(
      '\nWhat an event of a drag costs: script, style and layout, then with hit test, observers and paint too, by finger at 390 x 844, processor slowed 4 times; “times” what a bare page takes, tried in turn: the median event, and all with the beats that letter',
    );
    console.table(drags);
  });
});
