/**
 * Friction of guitar strings over a saddle. Source: T. Groves and J. A. Kemp, Archives of Acoustics 44 (2019), abstract: "lower than
 * 0.26 for wound strings (nickel plated steel windings on steel cores) and lower than 0.17 for unwound (tin plated steel) strings".
 * Status: read. That a string is held back as the capstan law says is their finding too.
 */
import { expect, test } from 'vitest';

import { heldBack, slotFriction } from '../../src/physics/index.ts';

const MOST = { plain: 0.17, wound: 0.26 };

test('the friction in use is the most of plain strings, and its range ends at the most of wound ones', () => {
  const { value, tolerance, source, status } = slotFriction;
  expect({ source, status }).toEqual({ source: 'groves-kemp-2019', status: 'read' });
  expect(value).toBe(MOST.plain);
  expect(value + tolerance).toBeCloseTo(MOST.wound, 9);
  expect(value - tolerance).toBeGreaterThan(0);
});

test('at their friction a wound string over 90 degrees hides a third of the greater pull, a plain one under a quarter', () => {
  const hidden = (friction: number): number =>
    1 - 1 / (1 + heldBack({ angle: Math.PI / 2, friction }).share);
  expect(hidden(MOST.wound)).toBeCloseTo(1 - Math.exp((-MOST.wound * Math.PI) / 2), 9);
  expect(hidden(MOST.wound)).toBeGreaterThan(0.33);
  expect(hidden(MOST.plain)).toBeLessThan(0.25);
});
