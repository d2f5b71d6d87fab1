import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {
  blockForV, foldDifference, foldFromProp, placeForV, vFromBlock, type Panel, type PropWhere, type VPropped,
} from '../../../../src/calc/geometry/fold/index.js';
import {turned} from '../../../../src/calc/geometry/polygon/index.js';
import {anyPanel, between, codesOf, deg, mm, numbersIn, valueOf} from './bench.js';

const half: Panel = {length: 330 * mm, thickness: 5 * mm, face: 'closing'};

describe('a V joint', () => {
  it('needs a block of L sin 2Γ with one half flat and L sin Γ with both tips propped', () => {
    expect(valueOf(blockForV(half, 6 * deg, {where: 'edge'}, 'one')).height).to.be.closeTo(330 * mm * Math.sin(12 * deg), 1e-15);
    expect(valueOf(blockForV(half, 6 * deg, {where: 'edge'}, 'both')).height).to.be.closeTo(330 * mm * Math.sin(6 * deg), 1e-15);
  });

  it('has half of its fold on each side, either way', () => {
    for (const propped of ['one', 'both'] as const) {
      const v = valueOf(vFromBlock(half, {height: 40 * mm, where: 'edge'}, propped));
      expect(v.angle).to.equal(2 * v.panelAngle);
    }
    expect(valueOf(vFromBlock(half, {height: 40 * mm, where: 'edge'}, 'one')).angle).to.be.closeTo(Math.asin(40 / 330), 1e-13);
    expect(valueOf(vFromBlock(half, {height: 40 * mm, where: 'edge'}, 'both')).panelAngle).to.be.closeTo(Math.asin(40 / 330), 1e-13);
  });

  it('stands on the two corners of an opened cut with both tips propped', () => {
    const open: Panel = {...half, face: 'opening'};
    const v = valueOf(vFromBlock(open, {height: 40 * mm, where: 'bench', fromCrease: 300 * mm}, 'both'));
    // the half turned about the joint in the upper skin, then set down on its lowest corner
    const [root = {x: NaN, y: NaN}, tip = {x: NaN, y: NaN}] = turned([{x: 0, y: 0}, {x: 330 * mm, y: 0}], v.panelAngle, {x: 0, y: 5 * mm});
    expect(root.y).to.be.below(tip.y);
    const along = (300 * mm - root.x) / (tip.x - root.x);
    expect(along * (tip.y - root.y)).to.be.closeTo(40 * mm, 1e-12);
    expect(v.edgeFromCrease).to.be.closeTo(tip.x, 1e-12);
    expect(v.edgeRise).to.be.closeTo(tip.y - root.y, 1e-12);
    expect(v.contact.x).to.be.closeTo(300 * mm, 1e-12);
    expect(v.contact.y).to.be.closeTo(40 * mm, 1e-12);
  });

  it('is there and back the same, and back to the place of a block at hand', () => {
    const where = fc.constantFrom<PropWhere[]>('edge', 'inset', 'bench', 'plumb'), ways = fc.constantFrom<VPropped[]>('one', 'both');
    // nearer to the joint the corner that a half stands on comes so far out that a block has two angles, or one by a hair
    fc.assert(fc.property(anyPanel, between(0.5 * deg, 14 * deg), where, ways, between(0.15, 0.6), (panel, angle, at, propped, share) => {
      const place = {where: at, inset: share * panel.length, fromCrease: share * panel.length, width: share * panel.length / 2};
      const block = blockForV(panel, angle, place, propped);
      fc.pre(block.ok);
      const {height} = valueOf(block);
      const v = valueOf(vFromBlock(panel, {...place, height}, propped));
      if (v.alongPanel === 0) return;
      expect(v.panelAngle).to.be.closeTo(angle, 1e-9);
      const back = valueOf(placeForV(panel, angle, height, propped));
      expect(back.inset).to.be.closeTo(panel.length - v.alongPanel, 1e-7);
      expect(back.fromCrease).to.be.closeTo(v.contact.x, 1e-7);
    }), {numRuns: 300});
  });

  it('is stopped by a groove, and with both tips propped refused, since nothing would lie where it should', () => {
    const grooved: Panel = {...half, groove: 1 * mm};
    const stop = 2 * Math.atan(1 / 10);
    const one = valueOf(vFromBlock(grooved, {height: 100 * mm, where: 'edge'}, 'one'));
    expect(one.stoppedByGroove).to.equal(true);
    expect(one.angle).to.be.closeTo(stop, 1e-15);
    expect(valueOf(vFromBlock(grooved, {height: 30 * mm, where: 'edge'}, 'both')).panelAngle).to.be.closeTo(Math.asin(30 / 330), 1e-13);
    expect(codesOf(vFromBlock(grooved, {height: 40 * mm, where: 'edge'}, 'both'))).to.deep.equal(['fold-past-groove']);
    expect(codesOf(blockForV(grooved, stop / 2 + 1e-3, {where: 'edge'}, 'both'))).to.deep.equal(['fold-past-groove']);
    expect(blockForV(grooved, stop / 2 - 1e-3, {where: 'edge'}, 'both').ok).to.equal(true);
  });

  it('never gives anything but finite numbers, and never throws, whatever the numbers', () => {
    const wild = fc.oneof(fc.double(), between(-0.1, 0.5), fc.constantFrom(0, 1e-12, 1e6));
    const board = fc.record({length: wild, thickness: wild, face: fc.constantFrom<Panel['face'][]>('closing', 'opening'), groove: wild});
    const prop = fc.record({
      height: wild, where: fc.constantFrom<PropWhere[]>('edge', 'inset', 'bench', 'plumb'), inset: wild, fromCrease: wild, width: wild,
    });
    fc.assert(fc.property(board, prop, wild, (panel, block, angle) => {
      for (const propped of ['one', 'both'] as const) {
        for (const outcome of [vFromBlock(panel, block, propped), blockForV(panel, angle, block, propped), placeForV(panel, angle, block.height, propped)]) {
          if (outcome.ok) for (const number of numbersIn(outcome.value)) expect(number).to.satisfy(Number.isFinite);
          else expect(outcome.problems).to.not.have.length(0);
        }
      }
    }), {numRuns: 1000});
  });
});

describe('a block a little off', () => {
  it('makes the difference of the two folds', () => {
    const tip: Panel = {length: 140 * mm, thickness: 5 * mm, face: 'closing'};
    expect(valueOf(foldDifference(tip, {height: 30 * mm, where: 'edge'}, 1 * mm))).to.be.closeTo(Math.asin(31 / 140) - Math.asin(30 / 140), 1e-13);
    expect(valueOf(foldDifference(tip, {height: 30 * mm, where: 'edge'}, -1 * mm))).to.be.below(0);
    expect(codesOf(foldDifference(tip, {height: 139.5 * mm, where: 'edge'}, 1 * mm))).to.deep.equal(['prop-too-tall']);
    expect(codesOf(foldDifference(tip, {height: 300 * mm, where: 'edge'}, 1 * mm))).to.deep.equal(['prop-too-tall']);
    expect(valueOf(foldDifference(tip, {height: 0, where: 'edge'}, 1 * mm))).to.equal(valueOf(foldFromProp(tip, {height: 1 * mm, where: 'edge'})).angle);
  });
});
