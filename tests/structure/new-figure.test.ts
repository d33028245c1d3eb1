/** A figure that was just made passes its own test, points its imports the right way and is a tag of the chapters. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

import { filesOf, makeFigure, withHandle, withTag } from '../../.tools/new-figure.mjs';
import { toolNode } from '../../.tools/toolchain.mjs';
import { importsOf, root, wrongImport } from './imports.ts';

let copy = '';
let written: string[] = [];

beforeAll(async () => {
  copy = mkdtempSync(join(tmpdir(), 'new-figure-'));
  for (const each of [
    'src',
    'content',
    '.tools',
    'package.json',
    'tests/vitest.config.ts',
    'tests/seed.ts',
    ...['drawn', 'sheet', 'states', 'handles.test'].map((name) => `tests/figures/marks/${name}.ts`),
  ])
    cpSync(join(root, each), join(copy, each), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'), 'dir');
  written = await makeFigure(copy, 'the-lever', 'feel');
}, 60_000);
afterAll(() => rmSync(copy, { recursive: true, force: true }));

test('it has a folder, a wrapper and a test of one name, and its imports point the right way', () => {
  expect(written).toContain('src/figures/feel/the-lever/TheLever.svelte');
  expect(written).toContain('src/components/figures/TheLever.astro');
  expect(written).toContain('tests/figures/the-lever.test.ts');
  expect(written).toContain('tests/figures/marks/the-lever.test.ts');
  for (const path of written) {
    const specifiers = importsOf(path, readFileSync(join(copy, path), 'utf8'));
    expect(specifiers.flatMap((each) => wrongImport(path, each) ?? [])).toEqual([]);
  }
});

test('its own tests pass', { timeout: 120_000 }, () => {
  const vitest = join(root, 'node_modules/vitest/vitest.mjs');
  const args = [
    vitest,
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--project',
    'unit',
    'the-lever',
  ];
  const tried = spawnSync(toolNode(), args, { cwd: copy, encoding: 'utf8' });
  expect(tried.stdout + tried.stderr).toMatch(/Tests\s.*passed/);
  expect(tried.status).toBe(0);
});

test('it is a tag once, beside all that were', () => {
  const list = readFileSync(join(root, 'src/pages/course/_components.ts'), 'utf8');
  const longer = withTag(list, 'the-lever');
  expect(longer.match(/TheLever/g)).toHaveLength(3);
  expect(longer.replaceAll(/.*TheLever.*\n/g, '')).toBe(list);
});

test('the words of its handle stand in the table of all of them', () => {
  const table = readFileSync(join(root, 'tests/figures/marks/handles.test.ts'), 'utf8');
  const longer = withHandle(table, 'the-lever');
  expect(longer.match(/TheLever/g)).toHaveLength(1);
  expect(longer.replaceAll(/.*TheLever.*\n/g, '')).toBe(table);
});

test('a name or a part that cannot be is refused, and nothing is written over', async () => {
  expect(() => filesOf('The Lever', 'feel')).toThrow(/small letters/);
  expect(() => filesOf('the-lever', 'bench')).toThrow(/part of the course/);
  await expect(makeFigure(copy, 'the-lever', 'feel')).rejects.toThrow(/another name/);
});
