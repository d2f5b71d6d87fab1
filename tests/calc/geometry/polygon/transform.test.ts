import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {
  bounds, mirrored, moved, movedTo, quarterTurned, signedArea, turned,
} from '../../../../src/calc/geometry/polygon/index.js';
import {anyOutline, lShape} from './outlines.js';

describe('moving and turning an outline', () => {
  it('brings the corner of the bounds to a place', () => {
    expect(bounds(movedTo(lShape, 2, 3))).to.deep.include({x: 2, y: 3});
    expect(moved([{x: 1, y: 2}], 0.5, -1)).to.deep.equal([{x: 1.5, y: 1}]);
  });

  it('turns by quarter turns without rounding, as turning by the angle does', () => {
    expect(quarterTurned([{x: 3, y: 1}, {x: 0, y: 0}], 1)).to.deep.equal([{x: -1, y: 3}, {x: 0, y: 0}]);
    fc.assert(fc.property(anyOutline, fc.integer({min: -9, max: 9}), (outline, quarters) => {
      const exact = quarterTurned(outline, quarters);
      turned(outline, quarters * Math.PI / 2).forEach(({x, y}, i) => {
        expect(exact[i]?.x).to.be.closeTo(x, 1e-12);
        expect(exact[i]?.y).to.be.closeTo(y, 1e-12);
      });
    }));
  });

  it('comes back after four quarter turns, and after being turned over twice', () => {
    fc.assert(fc.property(anyOutline, (outline) => {
      let round = outline;
      for (let i = 0; i < 4; i++) round = quarterTurned(round, 1);
      expect(round).to.deep.equal(outline);
      expect(mirrored(mirrored(outline))).to.deep.equal(outline);
    }));
  });

  it('keeps the corners counter-clockwise when turned over', () => {
    fc.assert(fc.property(anyOutline, (outline) => {
      expect(signedArea(mirrored(outline))).to.be.closeTo(signedArea(outline), 1e-12);
    }));
  });
});
