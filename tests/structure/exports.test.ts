/** What a file hands out is wanted somewhere else: nothing lies about that nobody uses. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

import { root } from './imports.ts';

const files = ['src', 'tests', '.tools', 'astro.config.mjs'].flatMap((top) =>
  /\.mjs$/.test(top)
    ? [top]
    : readdirSync(join(root, top), { recursive: true, encoding: 'utf8' })
        .filter((path) => /\.(ts|mjs|svelte|astro)$/.test(path))
        .map((path) => `${top}/${path}`),
);
const uncommented = (text: string): string => text.replace(/\/\/[^\n]*|\/\*[^]*?\*\//g, '');
const words = new Map(
  files.map((path) => [
    path,
    new Set(uncommented(readFileSync(join(root, path), 'utf8')).match(/[\w$]+/g)),
  ]),
);
/** In how many files each word stands */
const standsIn = new Map<string, number>();
for (const each of words.values())
  for (const word of each) standsIn.set(word, (standsIn.get(word) ?? 0) + 1);

/** Asked for by Astro, by name. */
const asked = ['GET', 'collections', 'getStaticPaths', 'prerender'];

test('every value that is exported is named in another file', () => {
  const exported = /^export (?:async )?(?:const|let|function\*?|class) ([\w$]+)/gm;
  const alone = files
    .filter((path) => path.startsWith('src/'))
    .flatMap((path) =>
      [...readFileSync(join(root, path), 'utf8').matchAll(exported)]
        .map(([, name = '']) => name)
        .filter((name) => standsIn.get(name) === 1 && !asked.includes(name))
        .map((name) => `${path}: ${name}`),
    );
  expect(alone).toEqual([]);
});
