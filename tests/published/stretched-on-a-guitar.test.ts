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
  bend,
  growingModuli,
  modulusUnder,
  modulusUnderDoubt,
  pluckGlide,
  responseOf,
  slackened,
  tipped,
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

  test('pushed aside a little, each rises as its measured constant says, within the stated doubt', () => {
    const doubt = modulusUnderDoubt(id, 'stretched') ?? NaN;
    for (const [i, { stress }] of rows.entries()) {
      const construction = { kind: 'plain', diameter: 7e-4, material: id } as const;
      const pull = stress * (Math.PI / 4) * construction.diameter ** 2;
      const at = { construction, speakingLength: 0.65, tension: pull, at: 0.325 };
      const { rise } = bend({ ...at, travel: 0.003 });
      // Small angles: cents are 600/ln 2 times (E A/T - 1) times half the square of the slope.
      const constant = (rise * Math.LN2) / 600 / ((0.003 / 0.325) ** 2 / 2) + 1;
      const { kappa = NaN } = strings[i] ?? {};
      expect(Math.abs(constant / kappa - 1)).toBeLessThan(doubt / 1.8);
    }
  });

  test('let out, plucked hard, or on a bridge that tips, each goes by the same constant', () => {
    const doubt = modulusUnderDoubt(id, 'stretched') ?? NaN;
    for (const [i, { stress }] of rows.entries()) {
      const construction = { kind: 'plain', diameter: 7e-4, material: id } as const;
      const tension = stress * (Math.PI / 4) * construction.diameter ** 2;
      const string = { construction, speakingLength: 0.65, tension };
      const strain = 1e-5;
      const cents = (600 / Math.LN2) * strain;
      const out = slackened({ construction, tension, share: strain });
      // Drawn aside in the middle by y, half of the stretch 2 y²/L² stays on average.
      const glide = pluckGlide({ ...string, at: 0.5, travel: 0.65 * Math.sqrt(strain) });
      const [bent, beside] = [string, string];
      const bridge = { stringArm: 0.01, springArm: 0.01, rate: 1e5, count: 1 };
      const { tilt, cents: moved } = tipped({ strings: [bent, beside], bent: 0, rise: 50, bridge });
      const { kappa = NaN } = strings[i] ?? {};
      for (const found of [
        -(out?.cents ?? NaN) / cents,
        (glide ?? NaN) / cents,
        (-(moved[1] ?? NaN) * Math.LN2) / 600 / ((tilt * bridge.stringArm) / 0.65),
      ])
        expect(Math.abs(found / kappa - 1)).toBeLessThan(doubt / 1.8);
    }
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
