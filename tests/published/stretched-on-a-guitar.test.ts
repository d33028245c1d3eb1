/**
 * Strings of nylon and fluorocarbon, lengthened a little on a guitar while their pitch was read: their stretch constant E A/T.
 * Source: M. B. Anderson and R. G. Beausoleil, Journal of the Acoustical Society of America 156(1) 683 (2024), the tables of the
 * authors' manuscript. Status: read. Each string stood a whole tone below its pitch; the printed modulus is the constant times the
 * stress at pitch, so that the stress follows from the two. The set that they call anomalous is not among these.
 */
import { describe, expect, test } from 'vitest';

import { families } from '../../src/instrument/families.ts';
import {
  axialStiffness,
  growingModuli,
  modulusUnder,
  modulusUnderDoubt,
  responseOf,
  type MaterialId,
} from '../../src/physics/index.ts';

/** A whole tone lower the pull is so much of what it is at pitch. */
const LOWER = 2 ** (-200 / 600);

interface Printed {
  readonly kappa: number;
  /** GPa */
  readonly modulus: number;
}
const printed = (...rows: readonly (readonly [number, number])[]): readonly Printed[] =>
  rows.map(([kappa, modulus]) => ({ kappa, modulus }));

// First, second and third string of each set.
const sets = {
  nylon: [
    printed([48.2, 8.33], [48.7, 4.82], [58.6, 3.87]),
    printed([47.9, 8.25], [53.5, 5.31], [57.5, 3.75]),
    printed([52.6, 9.09], [67.3, 6.72], [60.2, 3.97]),
  ].flat(),
  fluorocarbon: [
    printed([44.6, 13.04], [53.1, 8.86], [54.7, 5.71]),
    printed([45.4, 13.38], [47.1, 7.86], [52.6, 5.55]),
  ].flat(),
} as const;

/** Stress in Pa while it was measured, and the modulus in Pa that it showed there. */
const shown = ({ kappa, modulus }: Printed): { stress: number; modulus: number } => {
  const stress = ((modulus * 1e9) / kappa) * LOWER;
  return { stress, modulus: kappa * stress };
};

describe.each(Object.entries(sets) as [MaterialId, readonly Printed[]][])('%s', (id, strings) => {
  const rows = strings.map(shown);
  const off = rows.map(({ stress, modulus }) => {
    const ours = modulusUnder({ material: id, stress, asked: 'stretched' }) ?? NaN;
    return ours / modulus - 1;
  });

  test('every string lies within the stated doubt, and most within a tenth', () => {
    const doubt = modulusUnderDoubt(id, 'stretched') ?? NaN;
    for (const each of off) expect(Math.abs(each)).toBeLessThan(doubt);
    expect(off.filter((each) => Math.abs(each) < 0.1).length).toBeGreaterThan(0.7 * off.length);
  });

  test('the constants are the line of least squares through them', () => {
    const mean = (of: (row: (typeof rows)[number]) => number) =>
      rows.reduce((sum, row) => sum + of(row), 0) / rows.length;
    const [x, y] = [mean((r) => r.stress), mean((r) => r.modulus)];
    const growth = mean((r) => (r.stress - x) * (r.modulus - y)) / mean((r) => (r.stress - x) ** 2);
    expect(Math.abs((growingModuli[id]?.stretched[1] ?? NaN) - growth)).toBeLessThan(0.5);
    const rest = (y - growth * x) / 1e9;
    expect(Math.abs((growingModuli[id]?.stretched[0] ?? NaN) / 1e9 - rest)).toBeLessThan(0.1);
  });

  test('no single modulus would do: the first string is twice as stiff as the third', () => {
    const moduli = rows.map((r) => r.modulus);
    expect(Math.max(...moduli) / Math.min(...moduli)).toBeGreaterThan(2);
  });

  test('at pitch the stretch constant is much the same for all: 44 to 68', () => {
    for (const { stress } of rows) {
      const atPitch = stress / LOWER;
      const pull = atPitch * (Math.PI / 4) * 7e-4 ** 2;
      const construction = { kind: 'plain', diameter: 7e-4, material: id } as const;
      const { stretch } = responseOf({ construction, tension: pull });
      expect(stretch).toBeGreaterThan(44);
      expect(stretch).toBeLessThan(68);
    }
  });
});

test('wound strings over a bundle: what the drawer gives them lies among the fifteen measured', () => {
  // Stretch constant, and pull in N at pitch.
  const measured = [
    [46.0, 70.0],
    [48.7, 67.3],
    [58.2, 62.8],
    [46.4, 73.1],
    [49.0, 71.3],
    [51.9, 65.0],
    [51.0, 73.1],
    [48.5, 71.3],
    [54.3, 70.4],
    [63.7, 66.4],
    [53.2, 56.0],
    [57.9, 59.2],
  ] as const;
  const [bundle] = families['classical, nylon'].filter(({ kind }) => kind === 'measured');
  if (!bundle) throw new Error('no wound string');
  const ours = axialStiffness(bundle);
  // As measured, a tone below pitch, and as if the constant were the same at pitch: the truth lies between.
  const low = measured.map(([kappa, pull]) => kappa * pull * LOWER);
  const high = measured.map(([kappa, pull]) => kappa * pull);
  const mean = (of: readonly number[]) => of.reduce((sum, x) => sum + x, 0) / of.length;
  expect(ours).toBeGreaterThan(mean(low));
  expect(ours).toBeLessThan(mean(high));
});
