/** Every constant of the physics names a source that stands in content/data/sources.yaml, and how far it was followed. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

import data from '../../content/data/sources.yaml';
import * as physics from '../../src/physics/index.ts';
import { root } from '../structure/imports.ts';

interface Source {
  readonly id: string;
  readonly status: string;
}

interface Found {
  readonly path: string;
  readonly entry: Readonly<Record<string, unknown>>;
}

const sources = new Map((data as Source[]).map((source) => [source.id, source.status]));

/** Every object below `value` that looks like a constant: it has a tolerance, a source or a status. */
function constantsIn(value: unknown, path: string): readonly Found[] {
  if (typeof value !== 'object' || value === null) return [];
  const entry = value as Record<string, unknown>;
  const own = ['tolerance', 'source', 'status'].some((key) => key in entry)
    ? [{ path, entry }]
    : [];
  return [...own, ...Object.entries(entry).flatMap(([key, v]) => constantsIn(v, `${path}.${key}`))];
}

const constants = constantsIn(physics, 'physics');

/** What is wrong with a constant: empty when nothing is. */
function faultsOf({ path, entry }: Found): readonly string[] {
  const { source, status } = entry;
  if (typeof source !== 'string') return [`${path} names no source`];
  if (typeof status !== 'string') return [`${path} names no status`];
  if (!sources.has(source)) return [`${path}: ${source} is not in sources.yaml`];
  if (sources.get(source) === status) return [];
  return [`${path}: ${source} is ${sources.get(source)}, not ${status}`];
}

test('no id stands twice, and each status is a known one', () => {
  expect(sources.size).toBe((data as Source[]).length);
  const known = ['read', 'second-hand', 'memory'];
  expect([...sources].filter(([, status]) => !known.includes(status))).toEqual([]);
});

test('every constant names a source with the status that stands there', () => {
  expect(constants.length).toBeGreaterThan(25);
  expect(constants.flatMap(faultsOf)).toEqual([]);
});

test('a constant without a source, without a status, or with one that is not there, would be found', () => {
  const wrong = {
    bare: { value: 1, tolerance: 0.1 },
    silent: { value: 1, tolerance: 0.1, source: 'callister' },
    lost: { value: 1, tolerance: 0.1, source: 'nowhere', status: 'read' },
    vain: { value: 1, tolerance: 0.1, source: 'astm-a228', status: 'read' },
  };
  expect(constantsIn(wrong, 'wrong').flatMap(faultsOf)).toEqual([
    'wrong.bare names no source',
    'wrong.silent names no status',
    'wrong.lost: nowhere is not in sources.yaml',
    'wrong.vain: astm-a228 is second-hand, not read',
  ]);
});

test('the strength of wire and the thresholds of force name theirs', () => {
  const { strengthSource, feltSources } = physics;
  for (const id of [strengthSource, feltSources.force, feltSources.travel]) {
    expect(sources.has(id), id).toBe(true);
  }
});

test('no source id in the code of the physics is missing from the data', () => {
  const folder = join(root, 'src/physics');
  const named = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) =>
      [...readFileSync(join(folder, file), 'utf8').matchAll(/source: '([^']+)'/g)].map(
        (m) => m[1] ?? '',
      ),
    );
  expect(named.length).toBeGreaterThan(5);
  expect(named.filter((id) => !sources.has(id))).toEqual([]);
});
