import {expect} from '@open-wc/testing';
import {foldedSection, grooveToClose, jointGrooveAlong, jointGrooveWidth} from '../../../../src/calc/geometry/fold/index.js';
import {deg, mm} from './bench.js';

const t = 5 * mm, fold = 12 * deg;

describe('the groove of a joint across a cambered wing', () => {
  it('is 2 z tan(f/2) wide where the section is z high', () => {
    expect(jointGrooveWidth(9 * mm, fold)).to.be.closeTo(18 * mm * Math.tan(6 * deg), 1e-15);
  });

  it('is that of the board all along a flat wing', () => {
    const places = jointGrooveAlong(foldedSection([48 * mm, 72 * mm], [0]), t, 'closing', fold);
    expect(places.map(({x}) => Math.round(x / mm))).to.deep.equal([0, 48, 120]);
    for (const {width} of places) expect(width).to.be.closeTo(grooveToClose(t, fold), 1e-15);
  });

  it('follows the arch of the section: about twice as wide at the crest', () => {
    const section = foldedSection([48 * mm, 72 * mm], [10 * deg]);
    const [front, crest, rear] = jointGrooveAlong(section, t, 'closing', fold);
    expect(section.camberHeight).to.be.closeTo(5 * mm, 0.05 * mm);
    expect((crest?.width ?? 0) / (front?.width ?? 0)).to.be.within(1.9, 2.1);
    expect((crest?.width ?? 0) / (rear?.width ?? 0)).to.be.within(1.9, 2.1);
  });

  it('measures the upper face over the line of the lower edges, under a whole upper skin', () => {
    // front panel tipped up, rear panel down: the lower edges lie square under the ends of the skin
    const f = 10 * deg, {points} = foldedSection([48 * mm, 72 * mm], [f]);
    const [, crest = {x: NaN, y: NaN}, end = {x: NaN, y: NaN}] = points;
    const up = Math.atan2(crest.y, crest.x), down = f - up;
    const front = {x: t * Math.sin(up), y: -t * Math.cos(up)}, rear = {x: end.x - t * Math.sin(down), y: -t * Math.cos(down)};
    const over = (p: {x: number; y: number}): number =>
      ((rear.x - front.x) * (p.y - front.y) - (rear.y - front.y) * (p.x - front.x)) / Math.hypot(rear.x - front.x, rear.y - front.y);
    const heights = jointGrooveAlong(foldedSection([48 * mm, 72 * mm], [f]), t, 'closing', fold).map(({height}) => height);
    points.forEach((point, i) => { expect(heights[i]).to.be.closeTo(over(point), 1e-15); });
  });

  it('has two upper corners where the upper face opened over a whole lower skin', () => {
    const f = 10 * deg, section = foldedSection([60 * mm, 60 * mm], [f]);
    const places = jointGrooveAlong(section, t, 'opening', fold);
    expect(places).to.have.length(4);
    const [, before, after] = places;
    expect((after?.x ?? 0) - (before?.x ?? 0)).to.be.closeTo(2 * t * Math.sin(f / 2), 1e-15);
    expect(before?.height).to.be.closeTo(section.camberHeight + t * Math.cos(f / 2), 1e-15);
    expect(places[0]?.height).to.be.closeTo(t * Math.cos(f / 2), 1e-15);
  });
});
