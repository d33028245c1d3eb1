/**
 * Nylon 6,6 in bulk: 1.14 Mg/m3, Young's modulus 1.6 to 3.8 GPa.
 * Source: a glossary of engineering materials, Princeton University (MAE 324); Callister's appendix B has the same range. Status: read.
 * A string is drawn, and stiffer: the range of this project reaches from the bulk to beyond a string's typical 5 GPa.
 */
import { expect, test } from 'vitest';

import { materials } from '../../src/physics/index.ts';

test('nylon: 1140 kg/m3, and a modulus whose range holds the bulk’s', () => {
  const { density, modulus } = materials.nylon;
  expect(density).toMatchObject({ value: 1140, source: 'princeton-nylon' });
  expect(modulus.value - modulus.tolerance).toBeLessThanOrEqual(1.6e9 + 1);
  expect(modulus.value + modulus.tolerance).toBeGreaterThan(3.8e9);
});
