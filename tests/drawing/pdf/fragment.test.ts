import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import type {PieceSketch} from '../../../src/drawing/figures/sheet-layout.js';
import {clippedOutline, fragmentOf} from '../../../src/drawing/pdf/fragment.js';
import type {XY} from '../../../src/drawing/pen.js';

const area = {left: 10, right: 110, low: 20, high: 90};
const areaOf = (outline: readonly XY[]): number => outline.reduce((sum, {x, y}, i) => {
  const from = outline.at(i - 1) ?? {x, y};
  return sum + (from.x * y - x * from.y) / 2;
}, 0);
const rectangle = (x: number, y: number, length: number, width: number): readonly XY[] => [{x, y}, {x: x + length, y}, {x: x + length, y: y + width}, {x, y: y + width}];
const piece = (outline: readonly XY[]): PieceSketch => ({
  number: 3, name: 'strip', size: '', outline, places: [{words: 'in', at: {x: 50, y: 50}}, {words: 'out', at: {x: 5, y: 50}}],
  lines: [{kind: 'crease', face: 'A', from: {x: 0, y: 50}, to: {x: 160, y: 60}}, {kind: 'mark', face: 'A', from: {x: 0, y: 95}, to: {x: 200, y: 95}}],
});

describe('what of a piece lies on a page', () => {
  it('has the area that an upright rectangle shares with it', () => {
    const within = fc.tuple(fc.integer({min: 0, max: 120}), fc.integer({min: 0, max: 120}), fc.integer({min: 1, max: 120}), fc.integer({min: 1, max: 120}));
    fc.assert(fc.property(within, ([x, y, length, width]) => {
      const across = Math.max(0, Math.min(x + length, area.right) - Math.max(x, area.left));
      const up = Math.max(0, Math.min(y + width, area.high) - Math.max(y, area.low));
      expect(areaOf(clippedOutline(rectangle(x, y, length, width), area))).to.be.closeTo(across * up, 1e-9);
    }));
  });

  it('splits any triangle into what lies left and right of a line, with nothing lost', () => {
    const corner = fc.record({x: fc.double({min: 0, max: 100, noNaN: true}), y: fc.double({min: 0, max: 100, noNaN: true})});
    fc.assert(fc.property(fc.tuple(corner, corner, corner), fc.double({min: 0, max: 100, noNaN: true}), (outline, at) => {
      const all = {left: -1, right: 101, low: -1, high: 101};
      const [left, right] = [{...all, right: at}, {...all, left: at}].map((half) => areaOf(clippedOutline(outline, half)));
      expect((left ?? 0) + (right ?? 0)).to.be.closeTo(areaOf(outline), 1e-6);
    }));
  });

  it('cuts where one end lies all but on the line', () => {
    const outline = [{x: 0, y: 4}, {x: 0.01, y: 0}, {x: 0, y: 0}];
    const half = {left: 5e-324, right: 101, low: -1, high: 101};
    expect(areaOf(clippedOutline(outline, half))).to.be.closeTo(areaOf(outline), 1e-12);
  });

  it('keeps the lines and the words that lie on it', () => {
    const seen = fragmentOf(piece(rectangle(0, 0, 200, 100)), area);
    expect(seen?.outline).to.have.deep.members([...rectangle(10, 20, 100, 70)]);
    expect(seen?.lines).to.deep.equal([{kind: 'crease', face: 'A', from: {x: 10, y: 50.625}, to: {x: 110, y: 56.875}}]);
    expect(seen?.places.map(({words}) => words)).to.deep.equal(['in']);
  });

  it('is nothing to write on where it is a sliver or elsewhere', () => {
    expect(fragmentOf(piece(rectangle(0, 0, 13, 100)), area)).to.equal(null);
    expect(fragmentOf(piece(rectangle(120, 0, 50, 100)), area)).to.equal(null);
  });
});
