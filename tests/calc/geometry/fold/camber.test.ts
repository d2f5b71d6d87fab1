import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {foldedSection, foldForCamber} from '../../../../src/calc/geometry/fold/index.js';
import {between, codesOf, deg, mm, problemsOf, valueOf} from './bench.js';

const anyLength = between(10 * mm, 150 * mm);

describe('a folded section', () => {
  it('has a camber of a b sin f / (a² + b² + 2 a b cos f) over its true chord with one fold', () => {
    fc.assert(fc.property(anyLength, anyLength, between(0, 89 * deg), (a, b, f) => {
      const section = foldedSection([a, b], [f]);
      const squared = a * a + b * b + 2 * a * b * Math.cos(f);
      expect(section.camber).to.be.closeTo(a * b * Math.sin(f) / squared, 1e-12);
      expect(section.chord).to.be.closeTo(Math.sqrt(squared), 1e-12);
      expect(section.crestAlongSkin).to.equal(a);
      expect(Math.hypot(section.crest, section.camberHeight)).to.be.closeTo(a, 1e-12);
    }));
  });

  it('lies level from the leading to the trailing edge, its panels as long as they were cut', () => {
    const panels = fc.array(anyLength, {minLength: 2, maxLength: 6});
    fc.assert(fc.property(panels, between(0, 40 * deg), (lengths, f) => {
      const {points, chord, camberHeight} = foldedSection(lengths, lengths.slice(1).map(() => f / lengths.length));
      expect(points[0]).to.deep.equal({x: 0, y: 0});
      expect(points.at(-1)?.x).to.be.closeTo(chord, 1e-12);
      expect(points.at(-1)?.y).to.be.closeTo(0, 1e-12);
      lengths.forEach((length, i) => {
        const from = points[i] ?? {x: NaN, y: NaN}, to = points[i + 1] ?? {x: NaN, y: NaN};
        expect(Math.hypot(to.x - from.x, to.y - from.y)).to.be.closeTo(length, 1e-12);
      });
      expect(camberHeight).to.be.closeTo(Math.max(...points.map(({y}) => y)), 1e-12);
    }));
  });

  it('has its crest at the highest crease', () => {
    const section = foldedSection([20 * mm, 20 * mm, 80 * mm], [3 * deg, 9 * deg]);
    expect(section.crestAlongSkin).to.be.closeTo(40 * mm, 1e-15);
    expect(section.crest).to.equal(section.points[2]?.x);
  });

  it('is flat without folds, and has no crease in a whole board', () => {
    const flat = foldedSection([48 * mm, 72 * mm], [0]);
    expect(flat).to.include({camber: 0, camberHeight: 0});
    expect(flat.chord).to.be.closeTo(120 * mm, 1e-15);
    expect(foldedSection([120 * mm], [])).to.include({camber: 0, chord: 120 * mm});
  });

  it('shortens the chord by little', () => {
    const {chord} = foldedSection([48 * mm, 72 * mm], [8 * deg]);
    expect(chord).to.be.below(120 * mm);
    expect(chord).to.be.above(119 * mm);
  });
});

describe('the fold for a camber', () => {
  it('is atan 2m + asin(m (a² + b²) / (a b √(1 + 4m²))) with one crease', () => {
    const a = 48 * mm, b = 72 * mm, m = 0.05;
    expect(valueOf(foldForCamber([a, b], m)))
      .to.be.closeTo(Math.atan(2 * m) + Math.asin(m * (a * a + b * b) / (a * b * Math.sqrt(1 + 4 * m * m))), 1e-13);
  });

  it('gives the camber back, with any creases and shares', () => {
    const creased = fc.array(fc.tuple(anyLength, between(0.1, 3)), {minLength: 2, maxLength: 5});
    fc.assert(fc.property(creased, between(0.5 * deg, 60 * deg), (list, total) => {
      const panels = list.map(([length]) => length), shares = list.slice(1).map(([, share]) => share);
      const whole = shares.reduce((sum, share) => sum + share, 0);
      const {camber} = foldedSection(panels, shares.map((share) => total * share / whole));
      const found = valueOf(foldForCamber(panels, camber, shares));
      expect(found).to.be.closeTo(total, 1e-9);
    }));
  });

  it('is none for no camber', () => {
    expect(valueOf(foldForCamber([48 * mm, 72 * mm], 0))).to.equal(0);
  });

  it('is refused for more than a right angle gives, saying how much that is', () => {
    const [problem] = problemsOf(foldForCamber([30 * mm, 90 * mm], 0.4));
    expect(problem?.code).to.equal('camber-out-of-range');
    expect(problem?.args?.['most']).to.be.closeTo(30 * 90 / (30 ** 2 + 90 ** 2), 1e-12);
    expect(codesOf(foldForCamber([48 * mm, 72 * mm], -0.01))).to.deep.equal(['camber-out-of-range']);
  });

  it('is refused for panels, shares and numbers that cannot be', () => {
    expect(codesOf(foldForCamber([120 * mm], 0.05))).to.deep.equal(['crease-missing']);
    expect(codesOf(foldForCamber([48 * mm, 0], 0.05))).to.deep.equal(['length-not-positive']);
    expect(codesOf(foldForCamber([48 * mm, 72 * mm], 0.05, [0]))).to.deep.equal(['shares-unusable']);
    expect(codesOf(foldForCamber([48 * mm, 72 * mm], NaN))).to.deep.equal(['quantity-not-finite']);
  });
});
