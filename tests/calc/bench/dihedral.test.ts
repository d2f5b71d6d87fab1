import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {wingDihedral} from '../../../src/calc/bench/dihedral.js';
import type {WingDihedral} from '../../../src/calc/bench/dihedral.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {DimensionPath, DimensionValue} from '../../../src/calc/design/dimensions.js';

const deg = Math.PI / 180;
const mm = 1e-3;

type Values = Partial<Record<DimensionPath, DimensionValue>>;

function outcome(values: Values): ReturnType<typeof wingDihedral> {
  const {wing, board} = withValues(defaultDesign, values);
  return wingDihedral(wing, board);
}

function solved(values: Values): WingDihedral {
  const found = outcome(values);
  if (!found.ok) throw new Error(found.problems.map(({code}) => code).join(', '));
  return found.value;
}

const first = ({joints: [joint]}: WingDihedral): NonNullable<typeof joint> => {
  if (!joint) throw new Error('no joint');
  return joint;
};

describe('dihedral of a wing', () => {
  it('props a tip panel of length L by L sin Γ under its end', () => {
    const joint = first(solved({'wing.span': 0.66, 'wing.joints': [{angle: 12 * deg, at: 0.19}]}));
    expect(joint.panel).to.be.closeTo(0.14, 1e-12);
    expect(joint.block).to.be.closeTo(0.14 * Math.sin(12 * deg), 1e-12);
    expect(joint.rise).to.be.closeTo(joint.block, 1e-12);
    expect(joint.place.inset).to.be.closeTo(0, 1e-12);
    expect(joint.propped).to.equal('panel');
  });

  // common practice, no source: tip panels of 5 in with their ends resting on 1.5 in come out at 17.5°
  it('finds the angle that a block gives', () => {
    const joint = first(solved({
      'wing.span': 30 * 25.4 * mm, 'wing.joints': [{angle: 0, at: 10 * 25.4 * mm}], 'wing.dihedralBy': 'block', 'wing.blocks': [{height: 1.5 * 25.4 * mm}],
    }));
    expect(joint.angle / deg).to.be.closeTo(17.5, 0.05);
  });

  it('tells a V with one half flat from one with both tips propped', () => {
    const v = {'wing.span': 0.8, 'wing.joints': [{angle: 6 * deg, at: 0}]};
    const one = first(solved(v));
    expect(one.block).to.be.closeTo(0.4 * Math.sin(12 * deg), 1e-12);
    expect(one.fold / deg).to.be.closeTo(12, 1e-12);
    expect(one.lean).to.be.closeTo(one.fold, 1e-12);
    const both = first(solved({...v, 'wing.vPropped': 'both'}));
    expect(both.block).to.be.closeTo(0.4 * Math.sin(6 * deg), 1e-12);
    expect(both.fold / deg).to.be.closeTo(12, 1e-12);
    expect(both.lean).to.be.closeTo(both.angle, 1e-12);
  });

  it('finds where a block at hand must stand, and that block gives the angle back', () => {
    const joints = [{angle: 9 * deg, at: 0.2}];
    const placed = first(solved({'wing.joints': joints, 'wing.dihedralBy': 'place', 'wing.blocks': [{height: 0.012}]}));
    expect(placed.angle).to.equal(9 * deg);
    expect(placed.place.fromJoint).to.be.closeTo(0.012 / Math.tan(9 * deg), 1e-12);
    const back = first(solved({
      'wing.joints': joints, 'wing.dihedralBy': 'block', 'wing.blocks': [{height: 0.012}], 'wing.jointPlace': 'inset', 'wing.blockInset': placed.place.inset,
    }));
    expect(back.angle).to.be.closeTo(9 * deg, 1e-12);
  });

  it('shows a block that is missed: the panel leans on its face or lies flat', () => {
    const values = {'wing.span': 0.66, 'wing.joints': [{angle: 0, at: 0.19}], 'wing.dihedralBy': 'block', 'wing.jointPlace': 'bench', 'wing.blocks': [{height: 0.05}]};
    const leans = first(solved({...values, 'wing.blockFromJoint': 0.138}));
    expect(leans.place.kind).to.equal('panel-edge-against-stack-face');
    expect(leans.angle).to.be.closeTo(Math.acos(0.138 / 0.14), 1e-9);
    expect(leans.place.fromJoint).to.equal(0.138);
    const clear = first(solved({...values, 'wing.blockFromJoint': 0.15}));
    expect(clear.place.kind).to.equal('none');
    expect(clear.angle).to.equal(0);
  });

  it('props each of several panels from its own joint to the next', () => {
    const {joints, panels, tipRise, spanAsFlown} = solved({'wing.span': 0.8, 'wing.joints': [{angle: 4 * deg, at: 0.1}, {angle: 8 * deg, at: 0.25}]});
    for (const {panel} of joints) expect(panel).to.be.closeTo(0.15, 1e-12);
    expect(joints.map(({block}) => block)[0]).to.be.closeTo(0.15 * Math.sin(4 * deg), 1e-12);
    expect(panels.map(({angle}) => Math.round(angle / deg * 1e6) / 1e6)).to.deep.equal([0, 4, 12]);
    expect(tipRise).to.be.closeTo(0.15 * (Math.sin(4 * deg) + Math.sin(12 * deg)), 1e-12);
    expect(spanAsFlown).to.be.closeTo(2 * (0.1 + 0.15 * Math.cos(4 * deg) + 0.15 * Math.cos(12 * deg)), 1e-12);
  });

  it('weighs each strip with its chord as it is at that distance', () => {
    const {equivalent, sameRiseV} = solved({
      'wing.span': 1, 'wing.chord': 0.2, 'wing.tipChord': 0.1, 'wing.stations': [{chord: 0.2, at: 0.25, back: 0}], 'wing.joints': [{angle: 10 * deg, at: 0.25}],
    });
    const strips = 20_000;
    let weight = 0, turned = 0;
    for (let i = 0; i < strips; i++) {
      const y = (i + 0.5) / strips * 0.5;
      const chord = y < 0.25 ? 0.2 : 0.2 - (y - 0.25) / 0.25 * 0.1;
      weight += chord * y;
      turned += chord * y * (y < 0.25 ? 0 : 10 * deg);
    }
    expect(equivalent).to.be.closeTo(turned / weight, 1e-8);
    expect(sameRiseV).to.be.closeTo(Math.asin(0.25 * Math.sin(10 * deg) / 0.5), 1e-12);
  });

  it('says what one millimetre of block does', () => {
    const joint = first(solved({'wing.span': 0.66, 'wing.joints': [{angle: 12 * deg, at: 0.19}]}));
    expect(joint.perMillimetre).to.be.closeTo(Math.asin((joint.block + mm) / 0.14) - 12 * deg, 1e-12);
  });

  it('leaves a wing without joints flat', () => {
    const {joints, tipRise, spanAsFlown, equivalent} = solved({'wing.joints': [], 'wing.span': 0.66});
    expect([joints.length, tipRise, spanAsFlown, equivalent]).to.deep.equal([0, 0, 0.66, 0]);
  });

  it('refuses what cannot stand, and says beside which dimension', () => {
    const refusal = (values: Values): string => {
      const found = outcome(values);
      return found.ok ? '' : found.problems.map(({code, path}) => `${code} ${path ?? ''}`).join();
    };
    expect(refusal({'wing.joints': [{angle: 0.2, at: 0.5}]})).to.equal('joint-outside-wing wing.joints');
    expect(refusal({'wing.dihedralBy': 'block', 'wing.blocks': []})).to.equal('block-missing wing.blocks');
    expect(refusal({'wing.dihedralBy': 'block', 'wing.blocks': [{height: 1}]})).to.equal('prop-too-tall wing.blocks');
    expect(refusal({'wing.joints': [{angle: 50 * deg, at: 0}]})).to.equal('fold-out-of-range wing.joints');
    expect(refusal({'wing.joints': [{angle: 60 * deg, at: 0.1}, {angle: 60 * deg, at: 0.2}]})).to.equal('dihedral-past-upright wing.joints');
    expect(refusal({'wing.dihedralBy': 'place', 'wing.blocks': [{height: 0.1}]})).to.equal('prop-too-tall wing.joints');
  });

  it('goes from an angle to a block and back, whatever the cut and wherever the block stands', () => {
    fc.assert(fc.property(
      fc.double({min: 0.5, max: 40, noNaN: true}), fc.double({min: 0, max: 0.25, noNaN: true}), fc.constantFrom('closing', 'opening'),
      fc.constantFrom('edge', 'inset', 'bench', 'plumb'), fc.constantFrom('one', 'both'),
      (angle, at, jointFace, jointPlace, vPropped) => {
        const asked = {
          'wing.span': 0.7, 'wing.joints': [{angle: angle * deg, at: at < 0.02 ? 0 : at}], 'wing.jointFace': jointFace, 'wing.jointPlace': jointPlace,
          'wing.vPropped': vPropped, 'wing.blockFromJoint': 0.03, 'wing.blockInset': 0.01, 'wing.blockWidth': 0.005,
        };
        const there = outcome(asked);
        fc.pre(there.ok);
        const joint = first(there.value);
        const back = outcome({...asked, 'wing.dihedralBy': 'block', 'wing.blocks': [{height: joint.block}]});
        // past its greatest height a plumb block has two angles, and the smaller one counts
        if (back.ok && jointPlace === 'plumb' && first(back.value).angle < joint.angle - 1e-9) return;
        expect(back.ok && first(back.value).angle).to.be.closeTo(angle * deg, 1e-7);
      },
    ), {numRuns: 300});
  });
});
