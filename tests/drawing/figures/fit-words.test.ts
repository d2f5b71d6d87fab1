import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {pointInPolygon} from '../../../src/calc/geometry/polygon/index.js';
import {crosses, overlap, placeFor, type Plate, type Segment} from '../../../src/drawing/figures/fit-words.js';
import {anyOutline, rectangle} from '../../calc/geometry/polygon/outlines.js';

const plate = (x: number, y: number, width: number, height: number): Plate => ({x, y, width, height});

describe('room for words in an outline', () => {
  it('is in the middle where nothing is in the way', () => {
    expect(placeFor(rectangle(10, 20, 100, 40), 30, 10, [], [])).to.deep.equal({x: 60, y: 40});
  });

  it('is beside a line through the middle, and none where the line leaves too little', () => {
    const line: Segment = [{x: 60, y: 0}, {x: 60, y: 100}];
    const at = placeFor(rectangle(10, 20, 100, 40), 30, 10, [line], []);
    expect(Math.abs((at?.x ?? 60) - 60)).to.be.at.least(15);
    expect(placeFor(rectangle(10, 20, 100, 40), 60, 10, [line], [])).to.equal(undefined);
  });

  it('may be filled to the brim', () => {
    expect(placeFor(rectangle(0.1, 0.2, 0.3, 0.7), 0.3, 0.7, [], [])?.x).to.be.closeTo(0.25, 1e-12);
    expect(placeFor(rectangle(0, 0, 30, 7), 30.1, 7, [], [])).to.equal(undefined);
  });

  it('knows a segment that passes through, past, or along an edge', () => {
    const box = plate(0, 0, 10, 4);
    expect(crosses([{x: -20, y: 0}, {x: 20, y: 1}], box)).to.equal(true);
    expect(crosses([{x: 1, y: 1}, {x: 2, y: 1}], box)).to.equal(true);
    expect(crosses([{x: -20, y: 2}, {x: 20, y: 2}], box)).to.equal(false);
    expect(crosses([{x: -7, y: 0}, {x: 0, y: 7}], box)).to.equal(false);
    expect(crosses([{x: -20, y: 0}, {x: -6, y: 0}], box)).to.equal(false);
  });

  it('never leaves the outline, crosses a line or covers other words', () => {
    const size = fc.double({min: 0.01, max: 0.2, noNaN: true});
    const spot = fc.record({x: fc.double({min: -1, max: 1, noNaN: true}), y: fc.double({min: -1, max: 1, noNaN: true})});
    fc.assert(fc.property(anyOutline, size, size, fc.array(fc.tuple(spot, spot), {maxLength: 3}), spot, (outline, width, height, lines, other) => {
      const taken = plate(other.x, other.y, 0.2, 0.1);
      const at = placeFor(outline, width, height, lines, [taken]);
      if (!at) return;
      const found = {...at, width, height};
      expect(overlap(found, taken)).to.equal(false);
      // a grid of points a little inside the words: each inside the outline
      for (let i = 1; i < 10; i++) {
        for (let j = 1; j < 10; j++) {
          expect(pointInPolygon({x: at.x + (i / 10 - 0.5) * width, y: at.y + (j / 10 - 0.5) * height}, outline)).to.equal('inside');
        }
      }
      // no point of a line inside the words
      for (const [from, to] of lines) {
        for (let t = 0; t <= 1; t += 0.005) {
          const p = {x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y)};
          expect(Math.abs(p.x - at.x) < width / 2 - 1e-9 && Math.abs(p.y - at.y) < height / 2 - 1e-9).to.equal(false);
        }
      }
    }), {numRuns: 60});
  });
});
