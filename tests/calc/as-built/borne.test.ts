import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {justBorne} from '../../../src/calc/as-built/borne.js';

describe('as much as is just borne', () => {
  it('is where the effect is as large as it may be, whether it grows faster or slower than its cause', () => {
    fc.assert(fc.property(fc.double({min: 0.7, max: 2, noNaN: true}), fc.double({min: 1e-5, max: 10, noNaN: true}), fc.double({min: 0.5, max: 1.8, noNaN: true}), (power, borne, off) => {
      const share = (amount: number): number => (amount / borne) ** power;
      expect(share(justBorne(share, borne * off))).to.be.closeTo(1, 2e-3);
    }), {numRuns: 300});
  });

  it('stays short of what cannot be followed', () => {
    const share = (amount: number): number => (amount > 3 ? Infinity : amount / 4);
    expect(justBorne(share, 4)).to.be.closeTo(3, 0.01);
  });

  it('is what it would be in proportion where the effect never comes up to that', () => {
    expect(justBorne((amount) => amount / (1 + 2 * amount), 1)).to.equal(1);
  });
});
