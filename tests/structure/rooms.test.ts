import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

import { root, rules } from './imports.ts';

const visible = (folder: string) =>
  readdirSync(join(root, folder), { withFileTypes: true }).filter((e) => !e.name.startsWith('.'));

test('the top level holds the files and folders of the project, and nothing else', () => {
  const files = [
    'DEVELOPERS.md',
    'LICENSE',
    'README.md',
    'astro.config.mjs',
    'package-lock.json',
    'package.json',
    'svelte.config.js',
    'tsconfig.json',
  ];
  const folders = ['content', 'public', 'src', 'tests'];
  const made = ['dist', 'node_modules'];
  const found = visible('.').map((entry) => entry.name);
  expect(found.filter((name) => !made.includes(name)).sort()).toEqual(
    [...files, ...folders].sort(),
  );
});

test('every folder of the source is a room with a rule', () => {
  const folders = visible('src').filter((entry) => entry.isDirectory());
  expect(folders.map((entry) => entry.name).filter((name) => !(name in rules))).toEqual([]);
});
