import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {
  angleFromEdges, rearEdgeForAngle, slipAngle, slipForAngle, slipPlaceForAngle,
} from '../../../../src/calc/geometry/fold/index.js';
import {between, codesOf, deg, mm, valueOf} from './bench.js';

const chord = 78 * mm;

describe('a slip under the rear of a tailplane', () => {
  it('raises it by atan(h / x), touching at x from the pivot', () => {
    expect(valueOf(slipAngle(chord, {height: 1 * mm, fromPivot: 60 * mm}))).to.be.closeTo(Math.atan(1 / 60), 1e-15);
  });

  it('solves c sin d − w tan d = h, flush with the rear edge', () => {
    const d = valueOf(slipAngle(chord, {height: 1 * mm, width: 10 * mm}));
    expect(78 * Math.sin(d) - 10 * Math.tan(d)).to.be.closeTo(1, 1e-13);
    expect(d).to.be.above(Math.asin(1 / 78));
  });

  it('costs about half a degree for each half millimetre of foam crushed', () => {
    const d = (height: number): number => valueOf(slipAngle(60 * mm, {height, fromPivot: 55 * mm})) / deg;
    expect(d(1.5 * mm) - d(1 * mm)).to.be.closeTo(0.5, 0.05);
  });

  it('is there and back the same', () => {
    const place = fc.oneof(fc.record({fromPivot: between(30 * mm, 70 * mm)}), fc.record({width: between(2 * mm, 25 * mm)}));
    fc.assert(fc.property(place, between(0.1 * deg, 12 * deg), (at, angle) => {
      const {height} = valueOf(slipForAngle(chord, angle, at));
      expect(valueOf(slipAngle(chord, {...at, height}))).to.be.closeTo(angle, 1e-12);
      const {fromCrease} = valueOf(slipPlaceForAngle(chord, angle, height));
      expect(valueOf(slipAngle(chord, {height, fromPivot: fromCrease}))).to.be.closeTo(angle, 1e-9);
    }));
  });

  it('is refused out beyond the tailplane or wider than it', () => {
    expect(codesOf(slipAngle(chord, {height: 1 * mm, fromPivot: 90 * mm}))).to.deep.equal(['prop-beyond-edge']);
    expect(codesOf(slipAngle(chord, {height: 1 * mm, width: 80 * mm}))).to.deep.equal(['prop-past-crease']);
  });
});

describe('the angle from two edge heights', () => {
  it('is asin((z_rear − z_front) / c), less than nothing with the front edge higher', () => {
    expect(valueOf(angleFromEdges(chord, 12 * mm, 14 * mm))).to.be.closeTo(Math.asin(2 / 78), 1e-15);
    expect(valueOf(angleFromEdges(chord, 14 * mm, 12 * mm))).to.be.closeTo(-Math.asin(2 / 78), 1e-15);
  });

  it('is there and back the same', () => {
    fc.assert(fc.property(between(-20 * deg, 20 * deg), between(0, 50 * mm), (angle, front) => {
      expect(valueOf(angleFromEdges(chord, front, rearEdgeForAngle(chord, front, angle)))).to.be.closeTo(angle, 1e-12);
    }));
  });

  it('is refused for edges further apart than the chord, and for numbers that are none', () => {
    expect(codesOf(angleFromEdges(chord, 0, 80 * mm))).to.deep.equal(['edges-too-far-apart']);
    expect(codesOf(angleFromEdges(chord, NaN, 1 * mm))).to.deep.equal(['quantity-not-finite']);
    expect(codesOf(angleFromEdges(0, 0, 0))).to.deep.equal(['length-not-positive']);
  });
});
