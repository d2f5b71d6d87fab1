import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {foldFromProp, foldOverCrest, grooveToClose, stackUnderCrest} from '../../../../src/calc/geometry/fold/index.js';
import {anyFace, between, codesOf, deg, mm, numbersIn, problemsOf, valueOf} from './bench.js';

const a = 48 * mm, b = 72 * mm, t = 5 * mm;

describe('a board over a stack under its crest', () => {
  it('folds by asin(h / a) + asin(h / b) over a ridge', () => {
    const fold = valueOf(foldOverCrest(a, b, {height: 10 * mm}, t, 'opening'));
    expect(fold.front).to.be.closeTo(Math.asin(10 / 48), 1e-13);
    expect(fold.rear).to.be.closeTo(Math.asin(10 / 72), 1e-13);
    expect(fold.angle).to.be.closeTo(fold.front + fold.rear, 1e-15);
  });

  it('folds about twice as far as the same stack under an edge', () => {
    const crest = valueOf(foldOverCrest(60 * mm, 60 * mm, {height: 5 * mm}, t, 'opening')).angle;
    const edge = valueOf(foldFromProp({length: 60 * mm, thickness: t, face: 'closing'}, {height: 5 * mm, where: 'edge'})).angle;
    expect(crest / edge).to.be.closeTo(2, 1e-9);
  });

  it('touches both upper edges of the stack, both free edges on the bench, each lower face as long as it is', () => {
    const panel = between(60 * mm, 200 * mm), share = between(0.05, 0.5);
    fc.assert(fc.property(panel, panel, between(1 * mm, 8 * mm), anyFace, share, between(2 * mm, 15 * mm), (front, rear, thickness, face, wide, height) => {
      const width = wide * Math.min(front, rear);
      const outcome = foldOverCrest(front, rear, {height, width}, thickness, face);
      fc.pre(outcome.ok);
      const fold = valueOf(outcome);
      const bevel = face === 'closing' ? grooveToClose(thickness, fold.angle) / 2 : 0;
      const [nearFront, nearRear] = fold.contacts;
      expect(nearRear.x - nearFront.x).to.be.closeTo(width, 1e-12);
      for (const [edge, contact, length, slope] of [
        [fold.frontEdge, nearFront, front, fold.front], [fold.rearEdge, nearRear, rear, fold.rear],
      ] as const) {
        expect(edge.y).to.be.closeTo(0, 1e-12);
        expect(contact.y).to.be.closeTo(height, 1e-12);
        expect(Math.hypot(edge.x, fold.ridge)).to.be.closeTo(length - bevel, 1e-12);
        // the contact lies on the lower face, which runs from the edge to the ridge
        expect(contact.y).to.be.closeTo(Math.abs(edge.x - contact.x) * Math.tan(slope), 1e-12);
      }
    }), {numRuns: 300});
  });

  it('needs a lower stack the wider it is', () => {
    const height = (width: number): number => valueOf(stackUnderCrest(a, b, 15 * deg, t, 'closing', width)).height;
    expect(height(10 * mm)).to.be.below(height(0));
    expect(height(30 * mm)).to.be.below(height(10 * mm));
  });

  it('is there and back the same', () => {
    const panel = between(60 * mm, 200 * mm);
    fc.assert(fc.property(panel, panel, anyFace, between(0, 30 * mm), between(1 * deg, 30 * deg), (front, rear, face, width, angle) => {
      const {height} = valueOf(stackUnderCrest(front, rear, angle, t, face, width));
      expect(valueOf(foldOverCrest(front, rear, {height, width}, t, face)).angle).to.be.closeTo(angle, 1e-9);
    }), {numRuns: 300});
  });

  it('lies flat over no stack', () => {
    const fold = valueOf(foldOverCrest(a, b, {height: 0, width: 20 * mm}, t, 'opening'));
    expect(fold).to.include({angle: 0, ridge: 0});
    expect(fold.rearEdge.x).to.be.closeTo(b, 1e-15);
  });

  it('is stopped by a groove, its free edges in the air', () => {
    const fold = valueOf(foldOverCrest(a, b, {height: 10 * mm, width: 20 * mm}, t, 'closing', 1 * mm));
    expect(fold.angle).to.be.closeTo(2 * Math.atan(0.1), 1e-14);
    expect(fold.stoppedByGroove).to.equal(true);
    expect(fold.frontEdge.y).to.be.above(0);
    expect(fold.contacts[1].y).to.equal(10 * mm);
    expect(codesOf(stackUnderCrest(a, b, 15 * deg, t, 'closing', 0, 1 * mm))).to.deep.equal(['fold-past-groove']);
  });

  it('is refused over a stack too tall or too wide, and for lengths that cannot be', () => {
    const [tall] = problemsOf(foldOverCrest(a, b, {height: 60 * mm}, t, 'opening'));
    expect(tall?.code).to.equal('prop-too-tall');
    // a right angle is the most: a b / √(a² + b²)
    expect(tall?.args?.['most']).to.be.closeTo(a * b / Math.hypot(a, b), 1e-12);
    expect(codesOf(foldOverCrest(a, b, {height: 10 * mm, width: 121 * mm}, t, 'opening'))).to.deep.equal(['prop-too-wide']);
    expect(codesOf(foldOverCrest(0, b, {height: 10 * mm}, t, 'opening'))).to.deep.equal(['length-not-positive']);
    expect(codesOf(foldOverCrest(a, b, {height: -1}, t, 'opening'))).to.deep.equal(['length-not-positive']);
    expect(codesOf(stackUnderCrest(a, b, 2, t, 'opening'))).to.deep.equal(['fold-out-of-range']);
  });

  it('never gives anything but finite numbers, and never throws, whatever the numbers', () => {
    const wild = fc.oneof(fc.double(), between(1e-3, 0.5), fc.constantFrom(0, 1e-12, 1e6));
    fc.assert(fc.property(wild, wild, wild, wild, wild, wild, anyFace, (front, rear, height, width, thickness, groove, face) => {
      const outcomes = [
        foldOverCrest(front, rear, {height, width}, thickness, face, groove), foldOverCrest(front, rear, {height}, thickness, face),
        stackUnderCrest(front, rear, height, thickness, face, width),
      ];
      for (const outcome of outcomes) {
        if (outcome.ok) for (const number of numbersIn(outcome.value)) expect(number).to.satisfy(Number.isFinite);
        else expect(outcome.problems).to.not.have.length(0);
      }
    }), {numRuns: 1000});
  });
});
