import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {tailVolume, wingCubeLoading, wingLoading} from '../../../../src/calc/geometry/planform/index.js';

const amount = fc.double({min: 1e-3, max: 1e3, noNaN: true});

describe('loadings', () => {
  it('leaves wing cube loading the same when a plane of the same stuff is built to another scale', () => {
    fc.assert(fc.property(amount, amount, fc.double({min: 0.2, max: 5, noNaN: true}), (mass, area, scale) => {
      const here = wingCubeLoading(mass, area), there = wingCubeLoading(mass * scale ** 3, area * scale ** 2);
      expect(here.ok && there.ok && Math.abs(there.value / here.value - 1) < 1e-12).to.equal(true);
    }));
  });

  it('refuses a wing without area and a mass below nothing', () => {
    for (const loading of [wingLoading, wingCubeLoading]) {
      expect(loading(0.1, 0)).to.deep.equal({ok: false, problems: [{code: 'area-not-positive', args: {area: 0}}]});
      expect(loading(-0.1, 0.1)).to.deep.equal({ok: false, problems: [{code: 'mass-negative', args: {mass: -0.1}}]});
      expect(loading(NaN, 0.1).ok).to.equal(false);
      expect(loading(0.1, NaN).ok).to.equal(false);
      expect(loading(0, 0.1)).to.deep.equal({ok: true, value: 0});
    }
  });

  it('gives a tail twice the volume on twice the arm', () => {
    const tail = {tailArea: 0.01, arm: 0.3, wingArea: 0.08, wingLength: 0.1};
    expect(tailVolume({...tail, arm: 0.6})).to.be.closeTo(2 * tailVolume(tail), 1e-12);
  });
});
