import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {equivalentDihedral, sameRiseDihedral, wingAsFlown, type DihedralPanel} from '../../../../src/calc/geometry/fold/index.js';
import {between, deg, mm} from './bench.js';

describe('equivalent dihedral', () => {
  it('is the integral of angle, chord and distance over the half-wing, summed strip by strip', () => {
    const rows = fc.array(fc.tuple(between(20 * mm, 200 * mm), between(40 * mm, 150 * mm), between(0, 40 * deg)), {minLength: 1, maxLength: 4});
    fc.assert(fc.property(rows, between(40 * mm, 150 * mm), (list, tip) => {
      let y0 = 0;
      const panels: DihedralPanel[] = list.map(([length, chord0, angle], i) => {
        const panel = {y0, y1: y0 + length, chord0, chord1: list[i + 1]?.[1] ?? tip, angle};
        y0 += length;
        return panel;
      });
      let weight = 0, turned = 0;
      for (const {y0: from, y1, chord0, chord1, angle} of panels) {
        for (let i = 0; i < 2000; i++) {
          const part = (i + 0.5) / 2000, moment = (chord0 + (chord1 - chord0) * part) * (from + (y1 - from) * part) * (y1 - from);
          weight += moment;
          turned += moment * angle;
        }
      }
      expect(equivalentDihedral(panels)).to.be.closeTo(turned / weight, 1e-6);
    }), {numRuns: 50});
  });

  it('is the dihedral itself of a plain V, whatever its taper', () => {
    expect(equivalentDihedral([{y0: 0, y1: 0.4, chord0: 0.15, chord1: 0.08, angle: 6 * deg}])).to.be.closeTo(6 * deg, 1e-15);
  });

  it('counts the tips for more than their share of the span', () => {
    const tips = [{y0: 0, y1: 0.2, chord0: 0.1, chord1: 0.1, angle: 0}, {y0: 0.2, y1: 0.4, chord0: 0.1, chord1: 0.1, angle: 12 * deg}];
    expect(equivalentDihedral(tips)).to.be.closeTo(9 * deg, 1e-15);
  });

  it('is nothing without panels', () => {
    expect(equivalentDihedral([])).to.equal(0);
  });
});

describe('a wing as it flies', () => {
  it('is as wide as its panels stand out, its tips as high as they rise', () => {
    const {points, span, tipRise} = wingAsFlown(330 * mm, [{at: 190 * mm, angle: 12 * deg}]);
    expect(span).to.be.closeTo(2 * (190 + 140 * Math.cos(12 * deg)) * mm, 1e-15);
    expect(tipRise).to.be.closeTo(140 * mm * Math.sin(12 * deg), 1e-15);
    expect(points).to.have.length(3);
    expect(points[1]).to.deep.equal({y: 190 * mm, z: 0});
  });

  it('adds up the angles of joints one outside the other', () => {
    const {points, tipRise} = wingAsFlown(300 * mm, [{at: 0, angle: 3 * deg}, {at: 150 * mm, angle: 9 * deg}]);
    expect(points).to.have.length(3);
    expect(tipRise).to.be.closeTo(150 * mm * (Math.sin(3 * deg) + Math.sin(12 * deg)), 1e-15);
  });

  it('is the flat wing without joints', () => {
    expect(wingAsFlown(300 * mm, [])).to.include({span: 600 * mm, tipRise: 0});
  });

  it('has a V with the same rise of its tips', () => {
    const {tipRise} = wingAsFlown(300 * mm, [{at: 0, angle: 7 * deg}]);
    expect(sameRiseDihedral(tipRise, 300 * mm)).to.be.closeTo(7 * deg, 1e-15);
    expect(sameRiseDihedral(1, 0.5)).to.equal(Math.PI / 2);
    expect(sameRiseDihedral(1, 0)).to.equal(0);
  });
});
