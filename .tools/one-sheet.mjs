/**
 * An Astro integration that joins the stylesheets of each page into one file, in their order: a page of many figures would
 * else ask for a score of small ones. Pages with the same styles share a file, so that it is fetched once.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const link = /<link rel="stylesheet" href="([^"]*)">/g;

/** Joins the stylesheets of every page in `folder`; `base` is the path that addresses begin with. */
function joinSheets(folder, base) {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const inFolder = (address) => join(folder, address.slice(base.length));
  const joined = new Set();
  for (const file of files.filter((each) => each.endsWith('.html'))) {
    const path = join(folder, file);
    const html = readFileSync(path, 'utf8');
    const addresses = [...html.matchAll(link)].map(([, address]) => address);
    if (addresses.length < 2) continue;
    const css = addresses.map((address) => readFileSync(inFolder(address), 'utf8')).join('\n');
    const hash = createHash('sha256').update(css).digest('hex').slice(0, 8);
    const sheet = `${base}_astro/sheet.${hash}.css`;
    writeFileSync(inFolder(sheet), css);
    for (const address of addresses) joined.add(address);
    let isFirst = true;
    const one = html.replace(link, () => {
      const kept = isFirst ? `<link rel="stylesheet" href="${sheet}">` : '';
      isFirst = false;
      return kept;
    });
    writeFileSync(path, one);
  }
  // A script that comes later may still name the sheet of its own component.
  const scripts = files
    .filter((each) => each.endsWith('.js'))
    .map((each) => readFileSync(join(folder, each), 'utf8'))
    .join('\n');
  for (const address of joined) {
    if (!scripts.includes(address.slice(base.length))) rmSync(inFolder(address));
  }
}

/** @returns {import('astro').AstroIntegration} */
export function oneSheet() {
  let base = '/';
  return {
    name: 'one-sheet',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = `${config.base.replace(/\/$/, '')}/`;
      },
      'astro:build:done': ({ dir }) => joinSheets(fileURLToPath(dir), base),
    },
  };
}
