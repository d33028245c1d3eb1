/** The parts of listening, each against another road to the same: a sum written out, a matrix library, mathematics. */
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';

import { coarseComb, partialOf } from '../../src/physics/listening/coarse.ts';
import { leastSquares } from '../../src/physics/listening/complex.ts';
import { takeOff, transform } from '../../src/physics/listening/damped.ts';
import { spectrumOf } from '../../src/physics/listening/spectrum.ts';
import { fitStiff } from '../../src/physics/listening/stiff-fit.ts';
import { normal } from './plucked.ts';
import { generator } from './labs/chance.ts';

const band = { from: 11, count: 6, length: 100, size: 128 };
const tone = { re: 0.3, im: -0.2, decay: 0.012, angle: 0.71 };

describe('a dying tone', () => {
  it('has the transform that its samples add up to, and that slope', () => {
    const [sum, slope] = [new Float64Array(12), new Float64Array(12)];
    transform(tone, band, sum, slope);
    for (let k = 0; k < band.count; k += 1) {
      const theta = (2 * Math.PI * (band.from + k)) / band.size;
      let [re, im, sRe, sIm] = [0, 0, 0, 0];
      for (let t = 0; t < band.length; t += 1) {
        const size = Math.exp(-tone.decay * t);
        const [c, s] = [Math.cos((tone.angle - theta) * t), Math.sin((tone.angle - theta) * t)];
        re += size * c;
        im += size * s;
        sRe += t * size * c;
        sIm += t * size * s;
      }
      expect(sum[2 * k]).toBeCloseTo(re, 9);
      expect(sum[2 * k + 1]).toBeCloseTo(im, 9);
      expect(slope[2 * k]).toBeCloseTo(sRe, 7);
      expect(slope[2 * k + 1]).toBeCloseTo(sIm, 7);
    }
  });

  it('leaves nothing of its own sound when it is taken off with its mirror image', () => {
    const samples = Float64Array.from(
      { length: band.length },
      (_, t) =>
        2 *
        Math.exp(-tone.decay * t) *
        (tone.re * Math.cos(tone.angle * t) - tone.im * Math.sin(tone.angle * t)),
    );
    const { bins, size } = spectrumOf(samples, 48_000);
    expect(size).toBe(band.size);
    const cut = bins.slice(2 * band.from, 2 * (band.from + band.count));
    takeOff(cut, band, tone, { own: true, image: true }, new Float64Array(12));
    expect(Math.max(...cut.map(Math.abs))).toBeLessThan(1e-9);
  });
});

describe('least squares in complex numbers', () => {
  it('agrees with a real matrix library on the same equations written out', () => {
    const gauss = normal(generator(2));
    const count = 9;
    const drawnColumn = () => Float64Array.from({ length: 2 * count }, () => gauss());
    const columns = [drawnColumn(), drawnColumn(), drawnColumn()];
    const target = drawnColumn();
    const answer = leastSquares(columns, target, count);
    const rows = Array.from({ length: 2 * count }, (_, r) =>
      columns.flatMap((c) => {
        const [re, im] = [c[r & ~1] ?? 0, c[r | 1] ?? 0];
        return r % 2 === 0 ? [re, -im] : [im, re];
      }),
    );
    const matrix = new Matrix(rows);
    const expected = solve(matrix, Matrix.columnVector([...target])).to1DArray();
    expected.forEach((x, i) => expect(answer?.x[i]).toBeCloseTo(x, 9));
    const covariance = solve(matrix.transpose().mmul(matrix), Matrix.eye(6));
    columns.forEach((_, i) =>
      expect(answer?.variance[i]).toBeCloseTo(covariance.get(2 * i, 2 * i), 9),
    );
  });

  it('says when two columns are the same', () => {
    const column = Float64Array.from([1, 2, 3, 4]);
    expect(leastSquares([column, column], column, 2)).toBeUndefined();
  });
});

describe('the coarse comb', () => {
  const peaksAt = (numbers: readonly number[], f: number, b = 0) =>
    numbers.map((n) => ({
      frequency: partialOf({ fundamental: f, inharmonicity: b }, n),
      power: 1 / n ** 2,
      above: 1e5 / n ** 2,
    }));

  it.each([
    ['all partials', [1, 2, 3, 4, 5, 6, 7, 8]],
    ['odd ones alone', [1, 3, 5, 7, 9, 11, 13]],
    ['none below the fourth', [4, 5, 6, 7, 8, 9, 10, 11, 12]],
  ])('finds the fundamental of %s', (_, numbers) => {
    for (const [f, b] of [
      [41.2, 0],
      [110, 1e-3],
      [330, 2e-5],
    ] as const) {
      const guess = coarseComb(peaksAt(numbers, f, b));
      expect(Math.abs((guess?.fundamental ?? 0) / f - 1)).toBeLessThan(0.012);
    }
  });
});

describe('the weighted fit', () => {
  const truth = { fundamental: 196, inharmonicity: 4e-5 };
  const partials = (off: (n: number) => number) =>
    Array.from({ length: 20 }, (_, i) => {
      const n = i + 1;
      const frequency = partialOf(truth, n) * 2 ** (off(n) / 1200);
      return { n, frequency, doubt: (0.05 * Math.LN2 * frequency) / 1200 };
    });

  it('is exact where all partials lie on the law', () => {
    const fit = fitStiff(partials(() => 0));
    expect(fit.fundamental).toBeCloseTo(truth.fundamental, 9);
    expect(fit.inharmonicity / truth.inharmonicity).toBeCloseTo(1, 9);
    expect(fit.residual).toBeLessThan(1e-6);
  });

  it('is not pulled aside by three partials in twenty', () => {
    const fit = fitStiff(partials((n) => (n % 7 === 2 ? 30 : 0)));
    expect(fit.inharmonicity / truth.inharmonicity).toBeCloseTo(1, 6);
    expect(fit.trust.filter((t) => t === 0)).toHaveLength(3);
  });

  it('widens its doubts where the partials scatter more than they own to', () => {
    const gauss = normal(generator(5));
    const calm = fitStiff(partials(() => 0.05 * gauss()));
    const rough = fitStiff(partials(() => gauss()));
    const times = rough.inharmonicityDoubt / calm.inharmonicityDoubt;
    // The scatter is twenty times what each partial states.
    expect(times).toBeGreaterThan(12);
    expect(times).toBeLessThan(30);
    expect(rough.residual).toBeGreaterThan(0.6);
    expect(rough.residual).toBeLessThan(1.4);
  });
});
