import {expect} from '@open-wc/testing';
import {wingDihedral} from '../../../../src/calc/bench/dihedral.js';
import {flownWing, type FlownWing} from '../../../../src/calc/aero/handbook/flown-wing.js';
import {defaultDesign, withValues} from '../../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../../src/calc/design/design.js';

function flown({wing, board}: GliderDesign): FlownWing {
  const outcome = flownWing(wing, board);
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}

describe('a wing as it flies', () => {
  it('is narrower by the cosine of its tips, and its tips stand up by the sine', () => {
    const {span, area, tipRise} = flown(defaultDesign);   // 12° tips from 190 mm out, 660 mm from tip to tip
    expect(span).to.be.closeTo(2 * (0.19 + 0.14 * Math.cos(Math.PI / 15)), 1e-12);
    expect(area).to.be.closeTo(0.12 * span, 1e-12);
    expect(tipRise).to.be.closeTo(0.14 * Math.sin(Math.PI / 15), 1e-12);
  });

  it('adds the angles of several joints, and takes a V from the middle', () => {
    const design = withValues(defaultDesign, {'wing.joints': [{angle: 0.1, at: 0}, {angle: 0.2, at: 0.2}]});
    expect(flown(design).span).to.be.closeTo(2 * (0.2 * Math.cos(0.1) + 0.13 * Math.cos(0.3)), 1e-12);
  });

  it('is flat as cut without joints', () => {
    const {span, tipRise} = flown(withValues(defaultDesign, {'wing.joints': []}));
    expect([span, tipRise]).to.deep.equal([0.66, 0]);
  });

  it('agrees with the bench, from blocks as from angles', () => {
    for (const design of [defaultDesign, withValues(defaultDesign, {'wing.dihedralBy': 'block', 'wing.blocks': [{height: 0.025}]})]) {
      const dihedral = wingDihedral(design.wing, design.board);
      if (!dihedral.ok) throw new Error('no dihedral');
      expect(flown(design).span).to.be.closeTo(dihedral.value.spanAsFlown, 1e-12);
      expect(flown(design).tipRise).to.be.closeTo(dihedral.value.tipRise, 1e-12);
    }
  });

  it('flies with the angles it is given, whatever block they would need', () => {
    const design = withValues(defaultDesign, {'wing.jointPlace': 'bench', 'wing.blockFromJoint': 2});
    expect(flown(design).span).to.equal(flown(defaultDesign).span);
  });

  it('is refused for blocks taller than their panels', () => {
    const {wing, board} = withValues(defaultDesign, {'wing.dihedralBy': 'block', 'wing.blocks': [{height: 1}]});
    expect(flownWing(wing, board).ok).to.equal(false);
  });
});
