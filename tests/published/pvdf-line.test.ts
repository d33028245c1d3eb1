/**
 * Fluorocarbon (PVDF) line. Of specific gravity 1.79, and knotted it bears 598 MPa and more: patent US 7172810, claim 1 and
 * opening. Up to 103 kgf/mm2 unknotted: patent US 4521483, abstract. Status: read. As a bulk 1.78 g/cm3 and 2.1 GPa: a polymer maker's
 * bulletin as a public table of materials quotes it. Status: second-hand. Film drawn to 5.3 times its length, at most 4.0 GPa: abstract of
 * a paper on solid state coextrusion. Status: read. Over weeks it stretches much as gut does: N. Lynch-Aird and J. Woodhouse,
 * Materials 11 (2018) 2160, results. Status: read; no number of theirs was.
 */
import { unit } from 'mathjs';
import { expect, test } from 'vitest';

import { materials, modulusUnder } from '../../src/physics/index.ts';

const { density, modulus, strength } = materials.fluorocarbon;
const holds = (c: { value: number; tolerance: number }, printed: number): boolean =>
  Math.abs(c.value - printed) <= c.tolerance;

test('its density is the bulk’s, and its range holds the line’s', () => {
  expect(density).toMatchObject({ value: 1780, source: 'pvdf-line', status: 'read' });
  expect(holds(density, 1790)).toBe(true);
});

test('over weeks it is as stiff as gut, in a range that holds the bulk’s 2.1 GPa and a drawn film’s 4.0', () => {
  expect(modulus.value).toBe(materials.gut.modulus.value);
  expect(holds(modulus, 2.1e9)).toBe(true);
  expect(holds(modulus, 4.0e9)).toBe(true);
});

test('what resists a bend under a guitar’s pull is stiffer than what brings it to pitch', () => {
  const bent = modulusUnder({ material: 'fluorocarbon', stress: 0.25e9, asked: 'stretched' });
  expect(bent).toBeGreaterThan(modulus.value);
});

test('its strength holds what the best line bears, with a knot and without, and reaches well below', () => {
  const best = 103 * unit(1, 'kilogramforce').toNumber('N') * 1e6;
  expect(Math.round(best / 1e6)).toBe(1010);
  expect(Math.round((strength.value + strength.tolerance) / 1e7)).toBe(Math.round(best / 1e7));
  expect(holds(strength, 598e6)).toBe(true);
  expect(strength.value - strength.tolerance).toBeLessThan(0.6 * 598e6);
});
