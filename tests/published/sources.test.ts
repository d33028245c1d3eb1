/** Every source that the physics names stands in content/data/sources.yaml, followed as far as the physics says. */
import { expect, test } from 'vitest';

import data from '../../content/data/sources.yaml';
import { feltSources, materials, strengthSource } from '../../src/physics/index.ts';

interface Source {
  readonly id: string;
  readonly status: string;
}

const sources = new Map((data as Source[]).map((source) => [source.id, source.status]));
const constants = Object.values(materials).flatMap(({ density, modulus }) => [density, modulus]);

test('no id stands twice, and each status is a known one', () => {
  expect(sources.size).toBe((data as Source[]).length);
  const known = ['read', 'second-hand', 'memory'];
  expect([...sources].filter(([, status]) => !known.includes(status))).toEqual([]);
});

test('every constant of a material names a source with the status that stands there', () => {
  expect(constants.length).toBeGreaterThan(0);
  for (const { source, status } of constants) expect(sources.get(source), source).toBe(status);
});

test('the strength of wire and the two thresholds of the hand name theirs', () => {
  for (const id of [strengthSource, feltSources.low, feltSources.high]) {
    expect(sources.has(id), id).toBe(true);
  }
});
