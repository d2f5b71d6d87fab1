import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {moved} from '../../../src/calc/geometry/polygon/index.js';
import {slideClear} from '../../../src/calc/sheet/slide.js';
import {anyOutline, cornerGap, rectangle, sharedArea, taperedPanel} from '../geometry/polygon/outlines.js';

describe('sliding one outline clear of another', () => {
  it('stops a rectangle at the gap', () => {
    expect(slideClear(rectangle(0, 0, 2, 1), rectangle(0, 0, 1, 1), 0.1)).to.be.closeTo(2.1, 1e-12);
    expect(slideClear(rectangle(0, 0, 2, 1), rectangle(5, 0.5, 1, 9), 0)).to.be.closeTo(-3, 1e-12);
  });

  it('measures the gap across a slope and round a corner', () => {
    // a post above the slope of the panel, pushed left against it
    const slope = Math.atan2(0.06, 0.3);
    const clear = slideClear(taperedPanel, rectangle(0, 0.1, 0.01, 0.5), 0.002);
    expect(clear).to.be.closeTo((0.14 - 0.1) / Math.tan(slope) + 0.002 / Math.sin(slope), 1e-12);
    // passing by 3 mm lower, held off by the corner at 5 mm
    expect(slideClear(rectangle(0, 0, 1, 1), rectangle(0, 1.003, 1, 1), 0.005)).to.be.closeTo(1.004, 1e-12);
  });

  it('lets outlines pass that are a gap apart already', () => {
    expect(slideClear(rectangle(0, 0, 1, 1), rectangle(0, 2, 1, 1), 0.5)).to.equal(-Infinity);
  });

  it('leaves exactly the gap, and clears the other from there on', () => {
    const anyGap = fc.constantFrom(0, 0.002, 0.05), anyMore = fc.double({min: 0, max: 1, noNaN: true});
    fc.assert(fc.property(anyOutline, anyOutline, anyGap, anyMore, (a, b, gap, more) => {
      const clear = slideClear(a, b, gap);
      if (clear === -Infinity) return;
      const beside = moved(b, clear, 0), further = moved(b, clear + more, 0);
      expect(sharedArea(a, beside)).to.be.below(1e-9);
      expect(cornerGap(a, beside)).to.be.closeTo(gap, 1e-7);
      expect(sharedArea(a, further)).to.be.below(1e-9);
      expect(cornerGap(a, further)).to.be.at.least(gap - 1e-7);
    }));
  });
});
