/** `npm run screenshots`: builds the site and takes the README's pictures into .pictures/. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';

import { hydrated, open, scrollThrough } from '../tests/site/kit.ts';
import { Advice, main, root } from './toolchain.mjs';
import { withSite } from './with-site.mjs';

const folder = join(root, '.pictures');
const mostBytes = 150_000;

/** What is taken: a page as it opens, or one element of it. */
const pictures = [
  { name: 'home', path: '', colorScheme: 'light', viewport: { width: 1280, height: 800 } },
  {
    name: 'bench-phone',
    path: 'bench/',
    colorScheme: 'dark',
    viewport: { width: 390, height: 844 },
  },
  {
    name: 'chapter-figure',
    path: 'course/two-guitars-one-feel/',
    colorScheme: 'light',
    viewport: { width: 1280, height: 800 },
    element: 'main figure',
  },
];

/** As WebP, at the best quality that keeps the picture small. */
async function small(png) {
  for (const quality of [90, 80, 70, 60]) {
    const picture = await sharp(png).webp({ quality }).toBuffer();
    if (picture.length <= mostBytes) return picture;
  }
  throw new Advice(`A picture stays above ${mostBytes / 1000} kB: take less of the page.`);
}

async function take(browser, home, { name, path, element, ...view }) {
  const visit = await open(browser, home + path, { ...view, reducedMotion: 'reduce' });
  if (visit.problems.length) throw new Advice(`/${path}: ${visit.problems.join('\n')}`);
  await scrollThrough(visit.page);
  await visit.page.evaluate(() => scrollTo({ top: 0, behavior: 'instant' }));
  await hydrated(visit.page);
  const target = element ? visit.page.locator(element).first() : visit.page;
  const picture = await small(await target.screenshot());
  await writeFile(join(folder, `${name}.webp`), picture);
  console.log(`.pictures/${name}.webp, ${Math.round(picture.length / 1000)} kB`);
  await visit.close();
}

await main(async () => {
  await mkdir(folder, { recursive: true });
  await withSite(async (browser, home) => {
    for (const picture of pictures) await take(browser, home, picture);
  });
});
