import {good, refused, type Outcome} from '../../problem.js';

/** A square system of equations, taken apart once so that each right-hand side costs little. */
export type Solver = (rightHandSide: ArrayLike<number>) => Float64Array;

/** A pivot this much smaller than its matrix's largest entry leaves no digits. */
const rounding = 1e-12;

/**
 * LU factors with row exchanges, in place. G. H. Golub and C. F. Van Loan, Matrix Computations, algorithm 3.4.1.
 *
 * Refused: 'equations-singular' where two equations say the same, or where an entry is no number.
 *
 * @param matrix n × n, row by row; overwritten
 */
export function factorise(matrix: Float64Array, n: number): Outcome<Solver> {
  const order = Int32Array.from({length: n}, (_, i) => i);
  let largest = 0;
  for (const entry of matrix) largest = Math.max(largest, Math.abs(entry));
  for (let k = 0; k < n; k++) {
    let pivot = k, size = -1;
    for (let i = k; i < n; i++) {
      const entry = Math.abs(matrix[i * n + k] as number);
      if (entry > size) [pivot, size] = [i, entry];
    }
    if (!(size > rounding * largest && size < Infinity)) return refused({code: 'equations-singular'});
    if (pivot !== k) exchange(matrix, order, n, k, pivot);
    eliminate(matrix, n, k);
  }
  return good((rightHandSide) => substitute(matrix, order, n, rightHandSide));
}

/** Takes row k off all rows below it, two at a time: each entry of row k is then fetched half as often. */
function eliminate(matrix: Float64Array, n: number, k: number): void {
  const from = k * n, share = 1 / (matrix[from + k] as number);
  for (let i = k + 1; i < n; i += 2) {
    const a = i * n, b = i + 1 < n ? a + n : a;
    const fa = matrix[a + k] = (matrix[a + k] as number) * share;
    const fb = b === a ? 0 : matrix[b + k] = (matrix[b + k] as number) * share;
    for (let j = k + 1; j < n; j++) {
      const above = matrix[from + j] as number;
      matrix[a + j] = (matrix[a + j] as number) - fa * above;
      matrix[b + j] = (matrix[b + j] as number) - fb * above;
    }
  }
}

function exchange(matrix: Float64Array, order: Int32Array, n: number, a: number, b: number): void {
  const row = matrix.slice(a * n, (a + 1) * n);
  matrix.copyWithin(a * n, b * n, (b + 1) * n);
  matrix.set(row, b * n);
  [order[a], order[b]] = [order[b] as number, order[a] as number];
}

function substitute(lu: Float64Array, order: Int32Array, n: number, rightHandSide: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(order, (i) => rightHandSide[i] ?? 0);
  for (let i = 1; i < n; i++) {
    let sum = x[i] as number;
    for (let j = 0; j < i; j++) sum -= (lu[i * n + j] as number) * (x[j] as number);
    x[i] = sum;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i] as number;
    for (let j = i + 1; j < n; j++) sum -= (lu[i * n + j] as number) * (x[j] as number);
    x[i] = sum / (lu[i * n + i] as number);
  }
  return x;
}
