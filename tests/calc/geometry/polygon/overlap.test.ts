import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {
  moved, pointInPolygon, polygonDistance, polygonsOverlap, turned,
} from '../../../../src/calc/geometry/polygon/index.js';
import {anyOutline, cornerGap, lShape, rectangle, sharedArea, taperedPanel} from './outlines.js';

describe('where a point lies', () => {
  it('tells inside, edge and outside apart', () => {
    expect(pointInPolygon({x: 0.05, y: 0.15}, lShape)).to.equal('inside');
    expect(pointInPolygon({x: 0.2, y: 0.15}, lShape)).to.equal('outside');
    expect(pointInPolygon({x: 0.2, y: 0.1}, lShape)).to.equal('edge');
    expect(pointInPolygon({x: 0.3, y: 0.1}, lShape)).to.equal('edge');
    expect(pointInPolygon({x: 0.05, y: 0.1}, lShape)).to.equal('inside');
    expect(pointInPolygon({x: -1, y: 0}, lShape)).to.equal('outside');
    expect(pointInPolygon({x: 0, y: 0}, [])).to.equal('outside');
  });

  it('takes points within the tolerance for the edge', () => {
    expect(pointInPolygon({x: 0.2, y: 0.001}, lShape, 0.002)).to.equal('edge');
    expect(pointInPolygon({x: 0.2, y: -0.001}, lShape, 0.002)).to.equal('edge');
    expect(pointInPolygon({x: 0.2, y: 0.003}, lShape, 0.002)).to.equal('inside');
  });
});

describe('whether outlines overlap', () => {
  const square = rectangle(0, 0, 1, 1);

  it('lets outlines touch', () => {
    expect(polygonsOverlap(square, rectangle(1, 0, 1, 1))).to.equal(false);
    expect(polygonsOverlap(square, rectangle(1, 1, 1, 1))).to.equal(false);
    expect(polygonsOverlap(square, rectangle(1, 0.3, 2, 0.2))).to.equal(false);
    // into the notch of the L, touching on two sides
    expect(polygonsOverlap(lShape, rectangle(0.1, 0.1, 0.2, 0.1))).to.equal(false);
    expect(polygonsOverlap(lShape, moved(turned(lShape, Math.PI), 0.4, 0.3))).to.equal(false);
  });

  it('sees overlaps that have no corner inside and no edges crossing', () => {
    expect(polygonsOverlap(square, square)).to.equal(true);
    expect(polygonsOverlap(square, rectangle(0, 0, 1, 2))).to.equal(true);
    expect(polygonsOverlap(rectangle(0, 0, 3, 1), rectangle(1, -1, 1, 3))).to.equal(true);
    expect(polygonsOverlap(square, rectangle(0.2, 0.2, 0.1, 0.1))).to.equal(true);
    expect(polygonsOverlap(rectangle(0.2, 0.2, 0.1, 0.1), square)).to.equal(true);
    expect(polygonsOverlap(square, rectangle(0, 0.25, 1, 0.5))).to.equal(true);
    // the same square, started elsewhere and with a corner on an edge
    expect(polygonsOverlap(square, [{x: 1, y: 1}, {x: 0, y: 1}, {x: 0, y: 0}, {x: 0.5, y: 0}, {x: 1, y: 0}])).to.equal(true);
  });

  it('lets outlines overlap by the tolerance and no more', () => {
    expect(polygonsOverlap(square, rectangle(1 - 0.9e-9, 0, 1, 1))).to.equal(false);
    expect(polygonsOverlap(square, rectangle(1 - 4e-9, 0, 1, 1))).to.equal(true);
    expect(polygonsOverlap(square, rectangle(0.999, 0, 1, 1), 0.002)).to.equal(false);
  });

  it('agrees with the area that the outlines share', () => {
    fc.assert(fc.property(anyOutline, anyOutline, (a, b) => {
      const near = moved(b, (a[0]?.x ?? 0) - (b[0]?.x ?? 0) + 0.1, (a[0]?.y ?? 0) - (b[0]?.y ?? 0));
      const area = sharedArea(a, near);
      if (area > 1e-7) expect(polygonsOverlap(a, near)).to.equal(true);
      if (area < 1e-12 && cornerGap(a, near) > 1e-6) expect(polygonsOverlap(a, near)).to.equal(false);
      expect(polygonsOverlap(near, a)).to.equal(polygonsOverlap(a, near));
    }), {numRuns: 300});
  });
});

describe('the gap between outlines', () => {
  it('is the shortest way between them', () => {
    const square = rectangle(0, 0, 1, 1);
    expect(polygonDistance(square, rectangle(1.5, 0, 1, 1))).to.be.closeTo(0.5, 1e-12);
    expect(polygonDistance(square, rectangle(4, 5, 1, 1))).to.be.closeTo(5, 1e-12);
    expect(polygonDistance(taperedPanel, rectangle(0.1, 0.2, 0.1, 0.1)))
      .to.be.closeTo((0.2 - 0.12) * 0.3 / Math.hypot(0.3, 0.06), 1e-12);
  });

  it('is nothing when they touch, cross or one holds the other', () => {
    const square = rectangle(0, 0, 1, 1);
    expect(polygonDistance(square, rectangle(1, 0.5, 1, 1))).to.equal(0);
    expect(polygonDistance(rectangle(0, 0, 3, 1), rectangle(1, -1, 1, 3))).to.equal(0);
    expect(polygonDistance(square, rectangle(0.4, 0.4, 0.1, 0.1))).to.equal(0);
    expect(polygonDistance(rectangle(0.4, 0.4, 0.1, 0.1), square)).to.equal(0);
  });

  it('agrees with the nearest corner and edge of outlines that share no area', () => {
    fc.assert(fc.property(anyOutline, anyOutline, (a, b) => {
      const gap = polygonDistance(a, b);
      if (sharedArea(a, b) > 1e-9) expect(gap).to.equal(0);
      else if (gap > 0) expect(gap).to.be.closeTo(cornerGap(a, b), 1e-12);
    }));
  });
});
