import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {leastRoot} from '../../../../src/calc/geometry/fold/least-root.js';
import {between} from './bench.js';

describe('the least root', () => {
  it('is where a rising function comes up to the value', () => {
    fc.assert(fc.property(between(1e-6, 1.57), (angle) => {
      expect(leastRoot(Math.sin, Math.sin(angle), Math.PI / 2).at).to.be.closeTo(angle, 1e-7);
    }));
  });

  it('is the first of two', () => {
    expect(leastRoot((x) => x * (1 - x), 0.16, 1).at).to.be.closeTo(0.2, 1e-14);
  });

  it('is found just below a summit between two steps, which is told when it is too low', () => {
    const hill = (x: number): number => 1 - (x - 0.4321) ** 2;
    expect(leastRoot(hill, 1 - 1e-10, 1).at).to.be.closeTo(0.4321 - 1e-5, 1e-9);
    const {at, most} = leastRoot(hill, 1.001, 1);
    expect(at).to.equal(undefined);
    expect(most).to.be.closeTo(1, 1e-15);
  });

  it('is the beginning when that is high enough', () => {
    expect(leastRoot((x) => x, 0, 1).at).to.equal(0);
  });
});
