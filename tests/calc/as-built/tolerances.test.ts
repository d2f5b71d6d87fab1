import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {crookedAsBuilt} from '../../../src/calc/as-built/crooked.js';
import {asBuiltStudy, outOfTrue} from '../../../src/calc/as-built/study.js';
import {smallEnough, tolerancesOf, type Truth, type TruthId} from '../../../src/calc/as-built/tolerances.js';
import {plannedSizes} from '../../../src/calc/as-built/planned-sizes.js';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {flightOf} from '../../../src/calc/flight/flight.js';
import {turnTrack} from '../../../src/calc/flight/simulation/turning.js';

const deg = Math.PI / 180;
const gliding = withValues(defaultDesign, {'ballast.masses': [{mass: 0.029, at: 0.015}], 'arrangement.tailIncidence': -1.2 * deg});

function sure<T>(outcome: {readonly ok: true; readonly value: T} | {readonly ok: false; readonly problems: readonly {readonly code: string}[]}): T {
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}
const truth = (design: GliderDesign, id: TruthId): Truth => {
  const found = sure(tolerancesOf(design)).find((one) => one.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
const speedOf = (design: GliderDesign): number => sure(sure(flightOf(design)).trim).glide.speed;

describe('how true is true enough', () => {
  it('looks at everything that can be checked, what matters most first', () => {
    const truths = sure(tolerancesOf(gliding));
    expect(truths.map(({id}) => id)).to.have.members(['hollow', 'tail', 'balance', 'nose', 'tips', 'skew', 'bow', 'tip-weight', 'fin', 'twist']);
    const importance = truths.map(({step, within}) => step / within);
    expect(importance).to.deep.equal([...importance].sort((a, b) => b - a));
    for (const {within} of truths) expect(within).to.be.greaterThan(0).and.to.be.lessThan(Infinity);
  });

  it('is borne out by flying the changed plane: a tolerance off is a twentieth of the speed off', () => {
    const speed = speedOf(gliding), {hollow = NaN, tail} = plannedSizes(gliding);
    const some = 0.1;   // a tenth of the tolerance, where the speed is still straight in it
    const share = (changed: GliderDesign): number => Math.abs(speedOf(changed) / speed - 1) / some;
    expect(share(withValues(gliding, {'built.hollow': hollow + some * truth(gliding, 'hollow').within}))).to.be.closeTo(smallEnough.speed, 0.002);
    expect(share(withValues(gliding, {'built.tailFront': 0, 'built.tailRear': tail + some * truth(gliding, 'tail').within}))).to.be.closeTo(smallEnough.speed, 0.002);
    const more = [...gliding.ballast.masses, {mass: some * truth(gliding, 'nose').within, at: 0}];
    expect(share(withValues(gliding, {'ballast.masses': more}))).to.be.closeTo(smallEnough.speed, 0.002);
  });

  it('has the signs that every builder knows', () => {
    expect(truth(gliding, 'hollow').glide?.speed).to.be.lessThan(0);
    expect(truth(gliding, 'tail').glide?.speed).to.be.lessThan(0);
    expect(truth(gliding, 'balance').glide?.speed).to.be.lessThan(0);
    expect(truth(gliding, 'nose').glide?.speed).to.be.greaterThan(0);
    // to the right: fins' rear edges to the right, weight at the right tip, left half at more incidence, left tip forward, tail bowed to the right
    for (const id of ['fin', 'tip-weight', 'twist', 'skew', 'bow'] as const) expect(truth(gliding, id).radius, id).to.be.greaterThan(0);
  });

  it('allows what turns a circle that the simulation flies too', () => {
    const {within} = truth(gliding, 'fin');
    const {at, last} = sure(turnTrack(gliding, {fin: within / gliding.tail.fins.chord}));
    const rate = (last.heading - at(last.time - 0.02).heading) / 0.02;
    expect(last.speed / rate).to.be.within(0.9 * smallEnough.radius, 1.1 * smallEnough.radius);
  });

  it('has the same signs on any glider that flies', () => {
    fc.assert(fc.property(fc.integer({min: 27, max: 40}), fc.integer({min: -20, max: 0}), (grams, tenths) => {
      const plane = withValues(gliding, {'ballast.masses': [{mass: grams / 1000, at: 0.015}], 'arrangement.tailIncidence': tenths / 10 * deg});
      const truths = tolerancesOf(plane);
      if (!truths.ok) return;
      for (const {glide, radius, within} of truths.value) {
        expect(within).to.be.greaterThan(0);
        expect(glide !== undefined || radius !== undefined).to.equal(true);
      }
      expect(truth(plane, 'tail').glide?.speed).to.be.lessThan(0);
      expect(truth(plane, 'nose').glide?.speed).to.be.greaterThan(0);
    }), {numRuns: 25});
  });

  it('is refused with why the plane does not glide', () => {
    expect(tolerancesOf(defaultDesign).ok).to.equal(false);
  });
});

describe('a plane as measured, beside its plan', () => {
  const fins = (values: Parameters<typeof withValues>[1]): number => sure(crookedAsBuilt(withValues(gliding, values))).fin;
  const distance = plannedSizes(gliding).tipToTail;

  it('turns to the side to which the fins stand, by skew or bow', () => {
    expect(fins({'built.leftTipToTail': distance + 0.004, 'built.rightTipToTail': distance - 0.004})).to.be.greaterThan(0);
    expect(fins({'built.bow': -0.004})).to.be.lessThan(0);
    const right = sure(asBuiltStudy(withValues(gliding, {'built.bow': 0.006})));
    expect(right.turn?.track.radius).to.be.within(5, 100);
    const left = sure(asBuiltStudy(withValues(gliding, {'built.bow': -0.006})));
    expect(left.turn?.track.radius).to.be.closeTo(-(right.turn?.track.radius ?? NaN), 1e-3);
  });

  it('is mirrored by tips that are the other way about, and straight where they are alike', () => {
    const weight = (left: number, right: number): number => sure(crookedAsBuilt(withValues(gliding, {'built.tipLeft': left, 'built.tipRight': right}))).tipMass;
    expect(weight(0.029, 0.029)).to.be.closeTo(0, 1e-12);
    expect(weight(0.033, 0.026)).to.be.closeTo(-weight(0.026, 0.033), 1e-12);
    expect(weight(0.033, 0.026)).to.not.be.closeTo(0, 1e-6);
    // a body under a plain V hangs aside by half the difference: its weight acts as far aside as its centre lies below the wing
    const v = withValues(gliding, {'wing.joints': [{angle: 6 * deg, at: 0}]});
    const {tipMass} = sure(crookedAsBuilt(withValues(v, {'built.tipLeft': 0.036, 'built.tipRight': 0.033})));
    expect(Math.abs(tipMass)).to.be.lessThan(1e-3);
  });

  it('says how far it is out, of what was measured and counts', () => {
    const study = sure(asBuiltStudy(withValues(gliding, {
      'built.hollow': 0.005, 'built.tipLeft': 0.03, 'built.tipRight': 0.028, 'built.tailFront': 0, 'built.tailRear': 0.0012, 'built.bow': 0.3, 'built.leftTipToTail': 0.44,
    })));
    const off = outOfTrue(study);
    expect(off).to.have.all.keys('hollow', 'tips', 'tail');
    expect(off.hollow).to.be.closeTo(0.005 - (study.sizes.hollow ?? NaN), 1e-12);
    expect(off.tips).to.be.closeTo(0.002, 1e-12);
    expect(off.tail).to.be.closeTo(0.0012 - study.sizes.tail, 1e-12);
    expect(study.built.problems.map(({code}) => code)).to.have.members(['bow-too-large', 'other-one-missing']);
  });

  it('goes on with the plan where nothing was measured', () => {
    const study = sure(asBuiltStudy(gliding));
    expect(study.trim).to.equal(study.planned.trim);
    expect(study.turn).to.equal(undefined);
    expect(outOfTrue(study)).to.deep.equal({});
  });
});
