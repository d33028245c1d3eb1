/** Least squares in complex numbers, for a handful of unknowns. Real and imaginary parts stand by turns. */

export interface Solved {
  /** The unknowns */
  readonly x: Float64Array;
  /** Diagonal of the inverse of the normal matrix: variance of each unknown for noise of variance one */
  readonly variance: Float64Array;
}

/** Sum over conj(a) b. */
function dot(a: Float64Array, b: Float64Array, count: number): [number, number] {
  let re = 0;
  let im = 0;
  for (let k = 0; k < 2 * count; k += 2) {
    const ar = a[k] ?? 0;
    const ai = a[k + 1] ?? 0;
    const br = b[k] ?? 0;
    const bi = b[k + 1] ?? 0;
    re += ar * br + ai * bi;
    im += ar * bi - ai * br;
  }
  return [re, im];
}

/**
 * The unknowns x that bring the sum of columns times x nearest to `target`, with their variances; undefined where the columns can't
 * be told apart. Gauss and Jordan's elimination of the normal equations, whose columns are brought to length one first.
 */
export function leastSquares(
  columns: readonly Float64Array[],
  target: Float64Array,
  count: number,
): Solved | undefined {
  const n = columns.length;
  const width = 2 * n + 1;
  const scale = columns.map((c) => Math.sqrt(dot(c, c, count)[0]));
  const m = Array.from({ length: n }, () => new Float64Array(2 * width));
  columns.forEach((a, i) => {
    const row = m[i] ?? new Float64Array();
    row[2 * i] = 1;
    columns.slice(0, i).forEach((b, j) => {
      const [re, im] = dot(a, b, count);
      const by = (scale[i] ?? 1) * (scale[j] ?? 1);
      const other = m[j] ?? row;
      row[2 * j] = other[2 * i] = re / by;
      row[2 * j + 1] = im / by;
      other[2 * i + 1] = -im / by;
    });
    row[2 * (n + i)] = 1;
    const [re, im] = dot(a, target, count);
    row[4 * n] = re / (scale[i] ?? 1);
    row[4 * n + 1] = im / (scale[i] ?? 1);
  });
  for (let p = 0; p < n; p += 1) {
    const pivot = m[p] ?? new Float64Array();
    // The matrix is Hermitian and positive, so its pivots are real and none must be sought.
    const value = pivot[2 * p] ?? 0;
    if (!(value > 1e-11)) return undefined;
    for (let k = 0; k < 2 * width; k += 1) pivot[k] = (pivot[k] ?? 0) / value;
    m.forEach((row, i) => {
      if (i === p) return;
      const [fr, fi] = [row[2 * p] ?? 0, row[2 * p + 1] ?? 0];
      for (let k = 0; k < 2 * width; k += 2) {
        const [pr, pi] = [pivot[k] ?? 0, pivot[k + 1] ?? 0];
        row[k] = (row[k] ?? 0) - (fr * pr - fi * pi);
        row[k + 1] = (row[k + 1] ?? 0) - (fr * pi + fi * pr);
      }
    });
  }
  const x = new Float64Array(2 * n);
  const variance = new Float64Array(n);
  m.forEach((row, i) => {
    const s = scale[i] ?? 1;
    x[2 * i] = (row[4 * n] ?? 0) / s;
    x[2 * i + 1] = (row[4 * n + 1] ?? 0) / s;
    variance[i] = (row[2 * (n + i)] ?? 0) / (s * s);
  });
  return { x, variance };
}
