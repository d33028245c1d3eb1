import { fromHtml } from 'hast-util-from-html';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { visit } from 'unist-util-visit';
import { expect, inject, test } from 'vitest';

import { VERSION } from '../../src/instrument/link.ts';
import { dist, frames, htmlOf, pages } from './pages.ts';

interface Linked {
  /** Addresses of links, pictures, scripts and styles. */
  targets: string[];
  ids: string[];
}

const site = new Map<string, Linked>();
for (const path of [...pages(), ...frames()]) {
  const linked: Linked = { targets: [], ids: [] };
  const page = inject('origin') + path;
  visit(fromHtml(htmlOf(path)), 'element', ({ properties: { href, src, id } }) => {
    for (const address of [href, src])
      if (typeof address === 'string') linked.targets.push(new URL(address, page).href);
    if (typeof id === 'string') linked.ids.push(id);
  });
  site.set(path, linked);
}

/** Path below the home page, and the anchor. */
function split(address: string) {
  const [path = '', anchor = ''] = address.slice(inject('origin').length).split('#');
  return { path: decodeURIComponent(path.replace(/\?.*/, '')), anchor: decodeURIComponent(anchor) };
}

const isOwn = (address: string) => address.startsWith(inject('origin'));

test('every link, picture, script and style of the site leads to a file of it', () => {
  const broken = [...site].flatMap(([from, { targets }]) =>
    targets
      .filter(isOwn)
      .filter((target) => {
        const { path } = split(target);
        return !site.has(path) && !(path && !path.endsWith('/') && existsSync(join(dist, path)));
      })
      .map((target) => `/${from} -> ${target}`),
  );
  expect(site.size).toBeGreaterThan(0);
  expect(broken).toEqual([]);
});

test('every anchor leads to an element, or carries an instrument', () => {
  const broken = [...site].flatMap(([from, { targets }]) =>
    targets
      .filter(isOwn)
      .filter((target) => {
        const { path, anchor } = split(target);
        if (anchor === '' || anchor.startsWith(`${VERSION}/`) || !site.has(path)) return false;
        return !site.get(path)?.ids.includes(anchor);
      })
      .map((target) => `/${from} -> ${target}`),
  );
  expect(broken).toEqual([]);
});

test('every id stands once on its page', () => {
  const doubled = [...site].flatMap(([from, { ids }]) =>
    ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `/${from}: ${id}`),
  );
  expect(doubled).toEqual([]);
});

test('every page but the one for wrong addresses and those to be framed can be reached from the home page', () => {
  const reached = new Set(['']);
  for (const path of reached) {
    for (const target of site.get(path)?.targets ?? []) {
      if (isOwn(target) && site.has(split(target).path)) reached.add(split(target).path);
    }
  }
  expect(pages().filter((path) => !reached.has(path) && path !== '404.html')).toEqual([]);
});
