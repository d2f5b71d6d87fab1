import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {
  areaMoments, bounds, centroid, counterClockwise, mirrored, moved, signedArea, turned, type Polygon,
} from '../../../../src/calc/geometry/polygon/index.js';
import {anyOutline, lShape, rectangle} from './outlines.js';

describe('area moments of an outline', () => {
  it('gives a rectangle its textbook area, centre and second moments', () => {
    const {area, centroid: centre, xx, yy, xy} = areaMoments(rectangle(5, -2, 0.6, 0.2));
    expect(area).to.be.closeTo(0.12, 1e-12);
    expect(centre.x).to.be.closeTo(5.3, 1e-12);
    expect(centre.y).to.be.closeTo(-1.9, 1e-12);
    // b h³ / 12
    expect(xx).to.be.closeTo(0.6 * 0.2 ** 3 / 12, 1e-12);
    expect(yy).to.be.closeTo(0.2 * 0.6 ** 3 / 12, 1e-12);
    expect(xy).to.be.closeTo(0, 1e-12);
  });

  it('gives a right triangle its textbook second moments', () => {
    const {xx, yy, xy} = areaMoments([{x: 1, y: 1}, {x: 1.3, y: 1}, {x: 1, y: 1.2}]);
    // b h³ / 36 and −b² h² / 72 for the right angle at the lower left
    expect(xx).to.be.closeTo(0.3 * 0.2 ** 3 / 36, 1e-12);
    expect(yy).to.be.closeTo(0.2 * 0.3 ** 3 / 36, 1e-12);
    expect(xy).to.be.closeTo(-(0.3 ** 2) * 0.2 ** 2 / 72, 1e-12);
  });

  it('adds up over the pieces of an outline', () => {
    const whole = areaMoments(lShape);
    const pieces = [rectangle(0, 0, 0.3, 0.1), rectangle(0, 0.1, 0.1, 0.1)].map(areaMoments);
    const area = pieces.reduce((sum, piece) => sum + piece.area, 0);
    expect(whole.area).to.be.closeTo(area, 1e-12);
    const y = pieces.reduce((sum, piece) => sum + piece.area * piece.centroid.y, 0) / area;
    expect(whole.centroid.y).to.be.closeTo(y, 1e-12);
    const xx = pieces.reduce((sum, piece) => sum + piece.xx + piece.area * (piece.centroid.y - y) ** 2, 0);
    expect(whole.xx).to.be.closeTo(xx, 1e-12);
  });

  it('moves with the outline, and keeps its second moments', () => {
    fc.assert(fc.property(anyOutline, fc.double({min: -50, max: 50, noNaN: true}), (outline, by) => {
      const here = areaMoments(outline), there = areaMoments(moved(outline, by, -by));
      expect(there.area).to.be.closeTo(here.area, 1e-12);
      expect(there.centroid.x).to.be.closeTo(here.centroid.x + by, 1e-9);
      expect(there.centroid.y).to.be.closeTo(here.centroid.y - by, 1e-9);
      expect(there.xx).to.be.closeTo(here.xx, 1e-12);
      expect(there.xy).to.be.closeTo(here.xy, 1e-12);
    }));
  });

  it('keeps the polar moment when turned', () => {
    fc.assert(fc.property(anyOutline, fc.double({min: -7, max: 7, noNaN: true}), (outline, angle) => {
      const here = areaMoments(outline), there = areaMoments(turned(outline, angle, {x: 0.2, y: 0.1}));
      expect(there.xx + there.yy).to.be.closeTo(here.xx + here.yy, 1e-12);
      expect(there.xx * there.yy - there.xy ** 2).to.be.closeTo(here.xx * here.yy - here.xy ** 2, 1e-12);
    }));
  });

  it('knows which way round the corners run', () => {
    const clockwise: Polygon = [...lShape].reverse();
    expect(signedArea(lShape)).to.be.closeTo(0.04, 1e-12);
    expect(signedArea(clockwise)).to.be.closeTo(-0.04, 1e-12);
    expect(counterClockwise(clockwise)).to.deep.equal(lShape);
    expect(counterClockwise(lShape)).to.equal(lShape);
    expect(signedArea(mirrored(lShape))).to.be.closeTo(0.04, 1e-12);
  });

  it('answers for outlines without area', () => {
    expect(signedArea([])).to.equal(0);
    expect(bounds([])).to.deep.equal({x: 0, y: 0, length: 0, width: 0});
    expect(centroid([])).to.deep.equal({x: 0, y: 0});
    expect(centroid([{x: 1, y: 2}, {x: 3, y: 2}])).to.deep.equal({x: 1, y: 2});
  });
});
