/**
 * `npm run bench`: what the physics costs, what a drag costs on a phone-sized page, one a page, and what each page weighs. It prints and
 * judges nothing. A word tells what to look at alone, and names after it tell where: `npm run bench -- drag home rule-map` drags all
 * handles of a page or a figure, `-- drag` the first handle of each figure, `-- weights` weighs the pages, `-- start` looks at what
 * a page costs until it stands, `-- physics` at the physics, `-- build` at how the time of a build grows, `-- book` at finding one of
 * 300 instruments, `-- listen` at how long a page is held up while it listens.
 */
import { Advice, main } from '../../.tools/toolchain.mjs';
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

const kilobytes = (bytes) => Number((bytes / 1000).toFixed(1));
const rounded = (number) => (Number.isFinite(number) ? Number(number.toFixed(2)) : '');

/** Home, the bench and the chapters: the pages where something is dragged. */
const usual = () => pages().filter((path) => path === '' || /^(bench|course\/[^/]+)\/$/.test(path));
/** A page by its address, or by the last word of it; home has none. */
const isPage = (path, name) =>
  name === 'home' ? path === '' : [path, path.replace(/\/$/, '').split('/').at(-1)].includes(name);

/** The handles in sight, with the figure that each is in and its name. */
async function handlesOf(page) {
  const handles = await page.locator('[role=slider]:visible').all();
  const told = await Promise.all(
    handles.map((handle) =>
      handle.evaluate((element) => {
        const labels = element.getAttribute('aria-labelledby')?.split(' ') ?? [];
        const texts = labels.map((id) => document.getElementById(id)?.textContent ?? '');
        const name = element.getAttribute('aria-label') ?? texts.join(' ');
        const island = element.closest('astro-island')?.getAttribute('component-url') ?? '';
        return {
          figure: element.closest('figure[id]')?.id ?? island.match(/(\w+)\.[^/]*$/)?.[1] ?? '',
          name: name.trim(),
        };
      }),
    ),
  );
  return handles.map((handle, i) => ({ handle, ...told[i] }));
}

async function dragRows(handles, path, bare, pairs) {
  const rows = {};
  for (const { handle, figure, name } of handles) {
    const cost = await benchDrag(handle, bare, pairs);
    if (!cost) continue;
    rows[`/${path} ${figure}: ${name}`.slice(0, 72)] = {
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

/** Drags what `choose` takes of each page's handles, so many times, and prints what it cost. */
async function benchDrags(browser, home, paths, choose, pairs = 3) {
  const rows = {};
  const still = await open(browser, 'about:blank', { viewport: phone });
  const bare = await barePage(still.page);
  for (const path of paths) {
    const { page, close } = await open(browser, home + path, { viewport: phone });
    await scrollThrough(page);
    Object.assign(rows, await dragRows(choose(await handlesOf(page), path), path, bare, pairs));
    await close();
  }
  await still.close();
  console.log(
    'What an event of a drag costs: script, style and layout, then with hit test, observers and paint too, by finger at 390 x 844, ms of the processor’s own time, and the time to the next frame on one slowed 4 times; “times” what a bare page takes, tried in turn: the median event, and all with the beats that letter',
  );
  console.table(rows);
}

/** All handles of the pages or figures that are named; where nothing is, the first of each figure. */
const benchNamed = (browser, home, names) => {
  const named = usual().filter((path) => names.some((name) => isPage(path, name)));
  const areAllPages = names.every((name) => usual().some((path) => isPage(path, name)));
  // What is dragged in the prose goes a few steps at most, and moves what the figures move.
  const firstOfEach = (handles) =>
    handles
      .filter(({ figure }) => !figure.startsWith('Drag'))
      .filter(({ figure }, i, all) => all.findIndex((each) => each.figure === figure) === i);
  return benchDrags(
    browser,
    home,
    names.length > 0 && areAllPages ? named : usual(),
    (handles, path) => {
      if (names.length === 0) return firstOfEach(handles);
      if (named.includes(path)) return handles;
      return handles.filter(({ figure }) => names.includes(figure));
    },
  );
};

async function benchWeights(browser, home, names) {
  const weights = {};
  for (const path of pages()) {
    if (names.length > 0 && !names.some((name) => isPage(path, name))) continue;
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
    await close();
  }
  console.log('What each page weighs, in kB, compressed with gzip (fonts as they are)');
  console.table(weights);
}

const [what, ...names] = process.argv.slice(2);
const benches = {
  build: benchGrowth,
  physics: benchPhysics,
  book: () => withSite(benchFind),
  listen: () => {
    benchListen();
    return withSite((_, home) => benchFrames(home));
  },
  start: () =>
    withSite((browser) => {
      const some = usual().filter((path) => names.some((name) => isPage(path, name)));
      return benchStart(browser, dist, names.length > 0 ? some : usual());
    }),
  weights: () => withSite((browser, home) => benchWeights(browser, home, names)),
  drag: () => withSite((browser, home) => benchNamed(browser, home, names)),
};

await main(() => {
  if (what !== undefined) {
    const bench = benches[what];
    if (!bench)
      throw new Advice(`There is no bench “${what}”: ${Object.keys(benches).join(', ')}.`);
    return bench();
  }
  benchPhysics();
  benchListen();
  return withSite(async (browser, home) => {
    await benchWeights(browser, home, []);
    // Once each: a page's own numbers are those of `-- drag`, which tries three times.
    await benchDrags(browser, home, usual(), (handles) => handles.slice(0, 1), 1);
  });
});
