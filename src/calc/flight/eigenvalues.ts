/** A number with a real and an imaginary part. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export type Matrix = readonly (readonly number[])[];

const product = (a: Matrix, b: Matrix): number[][] =>
  a.map((row) => b.map((_, j) => row.reduce((sum, entry, k) => sum + entry * (b[k]?.[j] ?? 0), 0)));

const trace = (a: Matrix): number => a.reduce((sum, row, i) => sum + (row[i] ?? 0), 0);

/**
 * Coefficients of the characteristic polynomial λⁿ + c₁ λⁿ⁻¹ + … + cₙ of a small matrix, from c₁ on. U. Le Verrier and D. K. Faddeev:
 * each next coefficient is a trace.
 */
export function characteristicPolynomial(matrix: Matrix): number[] {
  const coefficients: number[] = [];
  let power: Matrix = matrix;
  for (let k = 1; k <= matrix.length; k++) {
    const c = -trace(power) / k;
    coefficients.push(c);
    power = product(matrix, power.map((row, i) => row.map((entry, j) => entry + (i === j ? c : 0))));
  }
  return coefficients;
}

/**
 * The eigenvalues of a small matrix, fastest first, as the roots of its characteristic polynomial, all at once. E. Durand (1960) and I. O. Kerner (1966).
 * For the four of a plane's motion, ten digits.
 */
export function eigenvalues(matrix: Matrix): Complex[] {
  const coefficients = characteristicPolynomial(matrix);
  const radius = 1 + Math.max(...coefficients.map((c, i) => Math.abs(c) ** (1 / (i + 1))));
  // an angle that no symmetry of the roots shares
  let roots = coefficients.map((_, i): Complex => {
    const angle = 2 * Math.PI * i / coefficients.length + 0.4;
    return {re: radius * Math.cos(angle), im: radius * Math.sin(angle)};
  });
  for (let round = 0; round < 200; round++) {
    const steps = roots.map((root, i) => {
      const others = roots.reduce((so, other, j) => (i === j ? so : times(so, minus(root, other))), {re: 1, im: 0});
      return over(valueAt(coefficients, root), others);
    });
    roots = roots.map((root, i) => minus(root, steps[i] ?? {re: 0, im: 0}));
    if (steps.every(({re, im}) => Math.hypot(re, im) <= 1e-15 * radius)) break;
  }
  return roots.map(({re, im}) => ({re, im: Math.abs(im) < 1e-7 * Math.hypot(re, im) ? 0 : im}))
    .sort((a, b) => Math.hypot(b.re, b.im) - Math.hypot(a.re, a.im));
}

const valueAt = (coefficients: readonly number[], at: Complex): Complex =>
  coefficients.reduce((so, c) => ({re: times(so, at).re + c, im: times(so, at).im}), {re: 1, im: 0});
const minus = (a: Complex, b: Complex): Complex => ({re: a.re - b.re, im: a.im - b.im});
const times = (a: Complex, b: Complex): Complex => ({re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re});
const over = (a: Complex, b: Complex): Complex => {
  const size = b.re * b.re + b.im * b.im || Number.MIN_VALUE;
  return {re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size};
};
