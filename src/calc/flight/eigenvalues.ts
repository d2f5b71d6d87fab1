/** A number with a real and an imaginary part. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export type Matrix = readonly (readonly number[])[];

/**
 * Coefficients of the characteristic polynomial λⁿ + c₁ λⁿ⁻¹ + … + cₙ of a small matrix, from c₁ on. U. Le Verrier and D. K. Faddeev:
 * each next coefficient is a trace.
 */
export function characteristicPolynomial(matrix: Matrix): number[] {
  const n = matrix.length, entries = Float64Array.from(matrix.flat()), coefficients: number[] = [];
  let power = entries;
  for (let k = 1; k <= n; k++) {
    let trace = 0;
    for (let i = 0; i < n; i++) trace += power[i * n + i] as number;
    const c = -trace / k;
    coefficients.push(c);
    if (k === n) break;
    const shifted = power.slice();
    for (let i = 0; i < n; i++) shifted[i * n + i] = (shifted[i * n + i] as number) + c;
    power = product(entries, shifted, n);
  }
  return coefficients;
}

function product(a: Float64Array, b: Float64Array, n: number): Float64Array<ArrayBuffer> {
  const all = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0; k < n; k++) sum += (a[i * n + k] as number) * (b[k * n + j] as number);
      all[i * n + j] = sum;
    }
  }
  return all;
}

/**
 * The eigenvalues of a small matrix, fastest first, as the roots of its characteristic polynomial, all at once. E. Durand (1960) and I. O. Kerner (1966).
 * For the four of a plane's motion, ten digits.
 */
export function eigenvalues(matrix: Matrix): Complex[] {
  const coefficients = characteristicPolynomial(matrix), n = coefficients.length;
  const radius = 1 + Math.max(...coefficients.map((c, i) => Math.abs(c) ** (1 / (i + 1))));
  // an angle that no symmetry of the roots shares
  const re = Float64Array.from(coefficients, (_, i) => radius * Math.cos(2 * Math.PI * i / n + 0.4));
  const im = Float64Array.from(coefficients, (_, i) => radius * Math.sin(2 * Math.PI * i / n + 0.4));
  let moved = Infinity;
  for (let round = 0; round < mostRounds; round++) {
    const before = moved;
    moved = improved(coefficients, re, im);
    // once they move by rounding alone, they no longer move less and less
    if (moved <= 1e-15 * radius || (moved < 1e-9 * radius && moved >= before)) break;
  }
  return Array.from(re, (real, i): Complex => ({re: real, im: Math.abs(im[i] as number) < 1e-7 * Math.hypot(real, im[i] as number) ? 0 : im[i] as number}))
    .sort((a, b) => Math.hypot(b.re, b.im) - Math.hypot(a.re, a.im));
}

const mostRounds = 200;

/** Moves each root by the polynomial there over its distances from the others, the moved ones where they now are; gives the longest move. */
function improved(coefficients: readonly number[], re: Float64Array, im: Float64Array): number {
  const n = coefficients.length;
  let longest = 0;
  for (let i = 0; i < n; i++) {
    const x = re[i] as number, y = im[i] as number;
    let valueRe = 1, valueIm = 0, apartRe = 1, apartIm = 0;
    for (let j = 0; j < n; j++) {
      const value = valueRe * x - valueIm * y + (coefficients[j] as number);
      valueIm = valueRe * y + valueIm * x;
      valueRe = value;
      if (j === i) continue;
      const dx = x - (re[j] as number), dy = y - (im[j] as number);
      const apart = apartRe * dx - apartIm * dy;
      apartIm = apartRe * dy + apartIm * dx;
      apartRe = apart;
    }
    const size = apartRe * apartRe + apartIm * apartIm || Number.MIN_VALUE;
    const moveRe = (valueRe * apartRe + valueIm * apartIm) / size, moveIm = (valueIm * apartRe - valueRe * apartIm) / size;
    re[i] = x - moveRe;
    im[i] = y - moveIm;
    longest = Math.max(longest, Math.abs(moveRe), Math.abs(moveIm));
  }
  return longest;
}
