import { readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { expect, test } from 'vitest';

import { circles, importsOf, root, sources, wrongImport } from './imports.ts';

const wrongIn = (path: string, text: string) =>
  importsOf(path, text).flatMap((specifier) => wrongImport(path, specifier) ?? []);

test('every import of the source points the right way', () => {
  const files = sources();
  expect(files).toContain('src/physics/index.ts');
  expect(files.flatMap((path) => wrongIn(path, readFileSync(join(root, path), 'utf8')))).toEqual(
    [],
  );
});

test('what every page may load of the physics reaches no package', () => {
  const reached = new Set<string>();
  const packages: string[] = [];
  const reach = (path: string): void => {
    if (reached.has(path)) return;
    reached.add(path);
    for (const specifier of importsOf(path, readFileSync(join(root, path), 'utf8')))
      if (specifier.startsWith('.')) reach(posix.join(dirname(path), specifier));
      else packages.push(`${path}: ${specifier}`);
  };
  reach('src/physics/index.ts');
  expect(reached.size).toBeGreaterThan(20);
  expect(packages).toEqual([]);
});

test('no files import each other in a circle', () => {
  const files = sources();
  const links = new Map(
    files.map((path) => [
      path,
      importsOf(path, readFileSync(join(root, path), 'utf8'))
        .filter((specifier) => specifier.startsWith('.'))
        .map((specifier) => posix.join(dirname(path), specifier)),
    ]),
  );
  expect(links.get('src/physics/match.ts')).toContain('src/physics/nearest-pull.ts');
  expect(circles(links)).toEqual([]);
});

test('a circle would be found, and two ways to one file are none', () => {
  const ring = { a: ['b', 'd'], b: ['c'], c: ['a'], d: ['c'] };
  expect(circles(new Map(Object.entries(ring)))).toEqual([['a', 'b', 'c', 'a']]);
  expect(circles(new Map(Object.entries({ a: ['b', 'c'], b: ['d'], c: ['d'] })))).toEqual([]);
});

test.each([
  ['src/physics/bend.ts', "import { scaleLinear } from 'd3-scale';"],
  ['src/physics/bend.ts', "import { readFileSync } from 'node:fs';"],
  ['src/physics/bend.ts', "import type { State } from '../instrument/schema.ts';"],
  ['src/physics/bend.ts', "export * from '../instrument/schema.ts';"],
  ['src/physics/bend.ts', "const late = await import('../figures/neck.ts');"],
  ['src/physics/bend.ts', "import strings from '../../content/data/strings.yaml';"],
  ['src/instrument/store.svelte.ts', "import Neck from '../figures/neck/Neck.svelte';"],
  ['src/instrument/store.svelte.ts', "import { scaleLinear } from 'd3-scale';"],
  ['src/instrument/store.svelte.ts', "import x from '../../tests/site/kit.ts';"],
  [
    'src/figures/neck/Neck.svelte',
    '<script>import Guess from "../../exercises/Guess.svelte";</script>',
  ],
  ['src/figures/neck/Neck.svelte', '<script>import * as d3 from "d3";</script><p>text</p>'],
  [
    'src/exercises/Guess.svelte',
    '<script lang="ts">\nimport A from "../components/A.astro";\n</script>',
  ],
  ['src/components/Cite.astro', "---\nimport Page from '../layouts/Page.astro';\n---\n<p>text</p>"],
  ['src/layouts/Page.astro', "---\nconst all = import.meta.glob('../pages/*.astro');\n---"],
  ['src/styles/page.css', "@import '../layouts/page.css';"],
  ['src/figures/feel/bending/a.ts', "import { b } from '../five-gauges/b.ts';"],
  ['src/figures/feel/bending/a.ts', "import type { B } from '../../pull/the-vice/b.ts';"],
  ['src/figures/bench/a.ts', "import { b } from '../page/describe/b.ts';"],
  ['src/figures/kit/a.ts', "import { b } from '../pull/the-vice/b.ts';"],
  ['src/new-room/a.ts', "import '../physics/index.ts';"],
  [
    'content/course/01-a.mdx',
    "---\ntitle: A\n---\nimport A from '../../src/components/A.astro';\n",
  ],
  ['content/course/01-a.mdx', 'Text.\n\nexport const length = 0.65;\n'],
])('%s: `%s` is refused', (path, text) => {
  expect(wrongIn(path, text)).toHaveLength(1);
});

test.each([
  ['src/physics/bend.ts', "import { inRange } from './guard.ts';"],
  ['src/physics/listening/spectrum.ts', "import FFT from 'fft.js';"],
  ['src/instrument/drawer.ts', "import strings from '../../content/data/strings.yaml';"],
  ['src/instrument/schema.ts', "import * as v from 'valibot';"],
  [
    'src/figures/neck/Neck.svelte',
    '<script>import { tension } from "../../physics/index.ts";</script>',
  ],
  ['src/figures/kit/axis.ts', "import { scaleLinear } from 'd3-scale';"],
  ['src/figures/feel/bending/a.ts', "import { b } from './b.ts';"],
  ['src/figures/feel/bending/a.ts', "import { b } from '../../kit/bend/b.ts';"],
  ['src/figures/quantities/bending.ts', "import { b } from '../feel/whole-string/slip.ts';"],
  ['src/layouts/Page.astro', "---\nimport '../styles/page.css';\n---"],
  ['src/pages/index.astro', "---\nimport Page from '../layouts/Page.astro';\n---"],
  ['content/course/01-a.mdx', '---\ntitle: A\n---\nImport duty is no import.\n'],
])('%s: `%s` is allowed', (path, text) => {
  expect(wrongIn(path, text)).toEqual([]);
});
