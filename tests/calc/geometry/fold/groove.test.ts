import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {glueFill, grooveStop, grooveToClose, slotThatOpens} from '../../../../src/calc/geometry/fold/index.js';
import {signedArea, turned} from '../../../../src/calc/geometry/polygon/index.js';
import {between, deg, mm} from './bench.js';

const anyFold = between(0.5 * deg, 60 * deg), anyBoard = between(1 * mm, 10 * mm);

describe('grooves and slots', () => {
  it('are as wide as the trigonometry of the board says', () => {
    expect(grooveToClose(5 * mm, 8 * deg)).to.be.closeTo(10 * mm * Math.tan(4 * deg), 1e-15);
    expect(slotThatOpens(5 * mm, 8 * deg)).to.be.closeTo(10 * mm * Math.sin(4 * deg), 1e-15);
  });

  it('closes at the stop of the groove that just closes', () => {
    fc.assert(fc.property(anyBoard, anyFold, (thickness, fold) => {
      expect(grooveStop(thickness, grooveToClose(thickness, fold))).to.be.closeTo(fold, 1e-12);
    }));
  });

  it('brings the two edges of a V groove together when one side is turned', () => {
    fc.assert(fc.property(anyBoard, anyFold, (thickness, fold) => {
      const half = grooveToClose(thickness, fold) / 2;
      const [edge] = turned([{x: half, y: thickness}], fold);
      expect(edge?.x).to.be.closeTo(-half, 1e-12);
      expect(edge?.y).to.be.closeTo(thickness, 1e-12);
    }));
  });

  it('opens the mouth of a cut when one side is turned', () => {
    fc.assert(fc.property(anyBoard, anyFold, (thickness, fold) => {
      const [edge = {x: NaN, y: NaN}] = turned([{x: 0, y: -thickness}], fold);
      expect(Math.hypot(edge.x, edge.y + thickness)).to.be.closeTo(slotThatOpens(thickness, fold), 1e-12);
    }));
  });
});

describe('glue left to fill', () => {
  it('is the triangle of an opened cut', () => {
    fc.assert(fc.property(anyBoard, anyFold, (thickness, fold) => {
      const [turnedSide = {x: NaN, y: NaN}] = turned([{x: 0, y: -thickness}], fold);
      const area = signedArea([{x: 0, y: 0}, {x: 0, y: -thickness}, turnedSide]);
      expect(glueFill(thickness, fold, 'opening')).to.be.closeTo(Math.abs(area), 1e-15);
    }));
  });

  it('is what a wide V groove leaves open below the two upper faces', () => {
    fc.assert(fc.property(anyBoard, anyFold, between(1.01, 4), (thickness, fold, wider) => {
      const width = wider * grooveToClose(thickness, fold);
      const [bevel = {x: NaN, y: NaN}] = turned([{x: width / 2, y: thickness}], fold);
      // the upper faces, drawn on, meet straight above the pivot in the plane that halves the fold
      const meet = {x: -thickness * Math.tan(fold / 2), y: thickness};
      const area = signedArea([{x: 0, y: 0}, bevel, meet, {x: -width / 2, y: thickness}]);
      expect(glueFill(thickness, fold, 'closing', width)).to.be.closeTo(area, 1e-15);
    }));
  });

  it('is nothing in a groove that just closes', () => {
    expect(glueFill(5 * mm, 8 * deg, 'closing')).to.equal(0);
    expect(glueFill(5 * mm, 8 * deg, 'closing', grooveToClose(5 * mm, 8 * deg))).to.equal(0);
  });
});
