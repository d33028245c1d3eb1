/**
 * The partials of a stiff string, found without their formula: the string cut into equal parts, its forces written as a matrix of
 * differences, and the matrix's eigenvalues found by a general library. As the parts shrink the partials must come to the closed
 * form, four times nearer for every halving.
 */
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';

import { bendingStiffness, linearDensity } from '../../src/physics/construction.ts';
import { partials } from '../../src/physics/stiffness.ts';
import { fromThousandths } from '../../src/physics/units.ts';

const wire = { kind: 'plain', diameter: fromThousandths(17), material: 'musicWire' } as const;
const string = {
  speakingLength: 0.3,
  tension: 75,
  linearDensity: linearDensity(wire),
  bendingStiffness: bendingStiffness(wire),
};

/** Frequencies in Hz, lowest first, of a pinned string of `parts` parts: mu y'' = T d²y - E I d⁴y. */
function byMatrix(parts: number): number[] {
  const { speakingLength, tension, linearDensity: mu, bendingStiffness: stiffness } = string;
  const h = speakingLength / parts;
  const size = parts - 1;
  const second = Matrix.zeros(size, size);
  for (let i = 0; i < size; i += 1) {
    second.set(i, i, -2 / h ** 2);
    if (i > 0) second.set(i, i - 1, 1 / h ** 2);
    if (i < size - 1) second.set(i, i + 1, 1 / h ** 2);
  }
  // A pinned end bears no moment, so that the fourth difference is the second one taken twice.
  const forces = Matrix.sub(
    Matrix.mul(second.mmul(second), stiffness / mu),
    Matrix.mul(second, tension / mu),
  );
  const { realEigenvalues } = new EigenvalueDecomposition(forces, { assumeSymmetric: true });
  return realEigenvalues.map((w) => Math.sqrt(w) / (2 * Math.PI)).sort((a, b) => a - b);
}

const closed = partials({ ...string, count: 6 });
const errorsAt = (parts: number) => {
  const found = byMatrix(parts);
  return closed.map((f, i) => Math.abs((found[i] ?? NaN) / f - 1));
};

test('the matrix comes to the closed form at second order: four times nearer for twice the parts', () => {
  const all = [20, 40, 80].map(errorsAt);
  closed.forEach((_, i) => {
    const [coarse, middle, fine] = all.map((errors) => errors[i] ?? NaN) as [
      number,
      number,
      number,
    ];
    expect(Math.log2(coarse / middle), `partial ${i + 1}`).toBeGreaterThan(1.9);
    expect(Math.log2(coarse / middle)).toBeLessThan(2.1);
    expect(Math.log2(middle / fine)).toBeGreaterThan(1.97);
    expect(Math.log2(middle / fine)).toBeLessThan(2.03);
  });
});

test('what is left at no width, by extrapolation, is the closed form', () => {
  const [coarse, fine] = [byMatrix(40), byMatrix(80)];
  closed.forEach((f, i) => {
    const limit = (4 * (fine[i] ?? NaN) - (coarse[i] ?? NaN)) / 3;
    expect(Math.abs(limit / f - 1), `partial ${i + 1}`).toBeLessThan(2e-5);
  });
});
