import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {centreOf} from '../../../src/calc/balance/mass-item.js';
import {anyGlider, balanced} from './gliders.js';

describe('a balance point', () => {
  it('is where the moments of all masses vanish, whatever the plane', () => {
    fc.assert(fc.property(anyGlider, (design) => {
      const {at, mass, masses: {items}} = balanced(design);
      const moment = items.reduce((sum, item) => sum + item.mass * (item.at - at), 0);
      expect(Math.abs(moment)).to.be.lessThan(1e-12);
      expect(items.reduce((sum, item) => sum + item.mass, 0)).to.be.closeTo(mass, 1e-12);
    }), {numRuns: 100});
  });

  it('is sure only where every mass is', () => {
    const known = {mass: 1, at: 1, sure: 'weighed'} as const;
    expect(centreOf([known, known]).sure).to.equal('weighed');
    expect(centreOf([known, {...known, sure: 'about'}]).sure).to.equal('about');
  });

  it('of nothing is the nose', () => {
    expect(centreOf([])).to.deep.equal({mass: 0, at: 0, sure: 'weighed'});
  });
});
