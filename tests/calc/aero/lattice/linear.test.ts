import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {factorise} from '../../../../src/calc/aero/lattice/linear.js';

const entry = fc.double({min: -10, max: 10, noNaN: true});
const system = fc.integer({min: 1, max: 9}).chain((n) => fc.record({
  n: fc.constant(n), matrix: fc.array(entry, {minLength: n * n, maxLength: n * n}), right: fc.array(entry, {minLength: n, maxLength: n}),
}));

describe('a system of linear equations', () => {
  it('is solved so that every equation holds, or refused', () => {
    fc.assert(fc.property(system, ({n, matrix, right}) => {
      // heavier diagonals keep the numbers away from singular ones, which are tried below
      const a = matrix.map((each, i) => each + (i % (n + 1) === 0 ? Math.sign(each || 1) * 10 * n : 0));
      const solved = factorise(Float64Array.from(a), n);
      if (!solved.ok) throw new Error('refused');
      const x = solved.value(right);
      for (let i = 0; i < n; i++) {
        const left = x.reduce((sum, each, j) => sum + each * (a[i * n + j] ?? 0), 0);
        expect(left).to.be.closeTo(right[i] ?? NaN, 1e-9);
      }
    }));
  });

  it('may begin with nothing in its corner', () => {
    const solved = factorise(Float64Array.of(0, 2, 4, 1), 2);
    expect(solved.ok && [...solved.value([6, 11])]).to.deep.equal([2, 3]);
  });

  it('is refused when two equations say the same, or one is no number', () => {
    for (const matrix of [[1, 2, 2, 4], [0, 0, 0, 0], [1, NaN, 2, 3], [Infinity, 1, 1, 1]]) {
      const solved = factorise(Float64Array.from(matrix), 2);
      expect(solved.ok ? [] : solved.problems.map(({code}) => code)).to.deep.equal(['equations-singular']);
    }
  });
});
