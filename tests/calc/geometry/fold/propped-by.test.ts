import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {foldFromProp, proppedBy, sectionProppedBy, type Panel} from '../../../../src/calc/geometry/fold/index.js';
import {anyPanel, between, codesOf, firstMeets, mm, standsInTheWay, turnedPanels, valueOf} from './bench.js';

const closing: Panel = {length: 72 * mm, thickness: 5 * mm, face: 'closing'};
const let72 = (nearFace: number, height = 10 * mm, width = 20 * mm, panel = closing) => valueOf(proppedBy(panel, {height, nearFace, width}));

describe('a panel let down on a stack that stands where it stands', () => {
  it('leans on the near upper edge of a stack in under it', () => {
    const rests = let72(40 * mm);
    expect(rests.contactKind).to.equal('stack-edge-under-panel');
    expect(rests.angle).to.be.closeTo(Math.atan(10 / 40), 1e-14);
    expect(rests.overhang).to.be.closeTo(72 * mm * Math.cos(rests.angle) - 60 * mm, 1e-15);
  });

  it('rests its own edge on the stack in one place only, as far out as it will go', () => {
    const flush = Math.sqrt(72 ** 2 - 10 ** 2) * mm;
    expect(let72(flush * (1 - 1e-14)).contactKind).to.equal('panel-edge-on-stack-top');
    expect(let72(flush).angle).to.be.closeTo(Math.asin(10 / 72), 1e-9);
    expect(let72(flush - 0.1 * mm).contactKind).to.equal('stack-edge-under-panel');
  });

  it('misses a stack a little further out and leans on its face, far flatter', () => {
    const rests = let72(71.8 * mm);
    expect(rests.contactKind).to.equal('panel-edge-against-stack-face');
    expect(rests.angle).to.be.closeTo(Math.acos(71.8 / 72), 1e-12);
    expect(rests.contact.x).to.be.closeTo(71.8 * mm, 1e-12);
    expect(rests.contact.y).to.be.below(10 * mm);
    expect(rests.angle).to.be.below(valueOf(foldFromProp(closing, {height: 10 * mm, where: 'edge'})).angle / 1.5);
  });

  it('lies flat beside a stack beyond its reach', () => {
    expect(let72(72.5 * mm)).to.include({contactKind: 'none', angle: 0, edgeRise: 0});
  });

  it('leans on the face of a stack taller than itself', () => {
    const rests = let72(50 * mm, 200 * mm);
    expect(rests.contactKind).to.equal('panel-edge-against-stack-face');
    expect(rests.angle).to.be.closeTo(Math.acos(50 / 72), 1e-12);
  });

  it('hangs out beyond a narrow stack and not beyond a wide one', () => {
    expect(let72(40 * mm, 10 * mm, 5 * mm).overhang).to.be.above(0);
    expect(let72(40 * mm, 10 * mm, 50 * mm).overhang).to.be.below(0);
  });

  it('needs the stack on its own side of the crease', () => {
    for (const nearFace of [0, -10 * mm]) {
      expect(codesOf(proppedBy(closing, {height: 10 * mm, nearFace, width: 20 * mm}))).to.deep.equal(['prop-past-crease']);
    }
    expect(codesOf(proppedBy(closing, {height: 10 * mm, nearFace: NaN, width: 20 * mm}))).to.deep.equal(['quantity-not-finite']);
  });

  it('just meets a stack that only the swing of an opening panel’s edge reaches', () => {
    const opening: Panel = {...closing, face: 'opening'};
    // at f = atan(t / L) the lower corner stands out furthest, √(L² + t²), and t high
    const rests = let72(Math.hypot(72, 5) * mm - 1e-9, 5 * mm, 20 * mm, opening);
    expect(rests.angle).to.be.closeTo(Math.atan(5 / 72), 1e-4);
    expect(let72(Math.hypot(72, 5) * mm + 1e-9, 5 * mm, 20 * mm, opening).contactKind).to.equal('none');
    // a lower stack there is swept over, and the panel comes down clear in front of it
    expect(let72(Math.hypot(72, 5) * mm - 1e-9, 1 * mm, 20 * mm, opening).contactKind).to.equal('none');
  });

  it('meets a stack where turned outlines first meet it', () => {
    fc.assert(fc.property(anyPanel, between(0.03, 1.1), between(0.01, 1.2), (panel, near, tall) => {
      const {length, thickness, face} = panel, nearFace = near * length, height = tall * length;
      const board = (angle: number) => turnedPanels([length, length], [angle], thickness, face);
      const rests = proppedBy(panel, {height, nearFace, width: 1});
      if (standsInTheWay(board, nearFace, height)) expect(codesOf(rests)).to.deep.equal(['prop-past-crease']);
      else expect(firstMeets(board, nearFace, height, valueOf(rests).angle)).to.deep.equal({clearAbove: true, meetsBelow: true});
    }), {numRuns: 200});
  });

  it('meets it there with several creases too', () => {
    const lengths = fc.array(between(20 * mm, 80 * mm), {minLength: 3, maxLength: 4});
    fc.assert(fc.property(lengths, anyPanel, between(0.1, 1.05), between(0.01, 0.8), (panels, {thickness, face}, near, tall) => {
      const reach = panels.slice(1).reduce((sum, each) => sum + each, 0), nearFace = near * reach, height = tall * reach;
      const creases = panels.length - 1;
      const board = (total: number) => turnedPanels(panels, Array.from({length: creases}, () => total / creases), thickness, face);
      const rests = sectionProppedBy({panels, propped: 'rear', thickness, face}, {height, nearFace, width: 1});
      if (standsInTheWay(board, nearFace, height)) expect(codesOf(rests)).to.deep.equal(['prop-past-crease']);
      else expect(firstMeets(board, nearFace, height, valueOf(rests).total)).to.deep.equal({clearAbove: true, meetsBelow: true});
    }), {numRuns: 200});
  });
});
