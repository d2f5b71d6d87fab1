import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {isSimple, turned, type Polygon} from '../../../../src/calc/geometry/polygon/index.js';
import {anyOutline, lShape, rectangle} from './outlines.js';

describe('whether an outline crosses itself', () => {
  it('finds outlines that go round once simple', () => {
    expect(isSimple(rectangle(0, 0, 1, 1))).to.equal(true);
    expect(isSimple(lShape)).to.equal(true);
    expect(isSimple([...lShape].reverse())).to.equal(true);
    fc.assert(fc.property(anyOutline, (outline) => isSimple(outline)));
  });

  it('allows corners on a straight edge and a corner given twice running', () => {
    expect(isSimple([{x: 0, y: 0}, {x: 0.5, y: 0}, {x: 1, y: 0}, {x: 1, y: 1}])).to.equal(true);
    expect(isSimple([{x: 0, y: 0}, {x: 0, y: 0}, {x: 1, y: 0}, {x: 1, y: 1}, {x: 0, y: 0}])).to.equal(true);
  });

  it('refuses outlines that cross, touch or run back over themselves', () => {
    const bowTie: Polygon = [{x: 0, y: 0}, {x: 1, y: 1}, {x: 1, y: 0}, {x: 0, y: 1}];
    expect(isSimple(bowTie)).to.equal(false);
    expect(isSimple(turned(bowTie, 0.3))).to.equal(false);
    const pinched: Polygon = [{x: 0, y: 0}, {x: 2, y: 0}, {x: 2, y: 1}, {x: 1, y: 0}, {x: 0, y: 1}];
    expect(isSimple(pinched)).to.equal(false);
    const spiked: Polygon = [{x: 0, y: 0}, {x: 2, y: 0}, {x: 1, y: 0}, {x: 1, y: 1}];
    expect(isSimple(spiked)).to.equal(false);
    const twice: Polygon = [...rectangle(0, 0, 1, 1), ...rectangle(0, 0, 1, 1)];
    expect(isSimple(twice)).to.equal(false);
  });

  it('refuses outlines that cross as little as numbers can tell', () => {
    expect(isSimple([{x: 0, y: 0}, {x: 1, y: 0}, {x: 0.6, y: 0.4}, {x: 0.5, y: -5e-324}, {x: 0.2, y: -1}])).to.equal(false);
    const bowTie: Polygon = [{x: 0, y: 0}, {x: 1e-90, y: 1e-90}, {x: 1e-90, y: 0}, {x: 0, y: 1e-90}];
    expect(isSimple(bowTie)).to.equal(false);
  });

  it('refuses what has no three corners', () => {
    expect(isSimple([])).to.equal(false);
    expect(isSimple([{x: 0, y: 0}, {x: 1, y: 0}])).to.equal(false);
  });

  it('refuses any outline with two corners changed over', () => {
    fc.assert(fc.property(fc.integer({min: 5, max: 12}), (n) => {
      const corners = Array.from({length: n}, (_, i) =>
        ({x: Math.cos(2 * Math.PI * i / n), y: Math.sin(2 * Math.PI * i / n)}));
      const [a, b, ...rest] = corners;
      return a && b ? !isSimple([b, a, ...rest]) : false;
    }));
  });
});
