import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {coins, washers} from '../../../shared/ballast.js';
import {balancePlan} from '../../../src/calc/balance/balance-plan.js';
import {throwableBalance} from '../../../src/calc/balance/throwable-balance.js';
import {weightsForBalance, type WeightsForBalance} from '../../../src/calc/balance/weights-for-balance.js';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {flyingPlane} from '../../../src/calc/flight/flying-plane.js';
import type {Outcome} from '../../../src/calc/problem.js';
import {readQuantity} from '../../../src/calc/units/read.js';
import {writeQuantity} from '../../../src/calc/units/write.js';
import {anyGlider, balanced} from './gliders.js';

const g = 1e-3;

function needed(design: GliderDesign): WeightsForBalance {
  const weights = weightsForBalance(design);
  if (!weights.ok || !weights.value) throw new Error(weights.ok ? 'nothing needed' : weights.problems.map(({code}) => code).join());
  return weights.value;
}

const weighted = (...masses: readonly (readonly [mass: number, at: number])[]): GliderDesign =>
  withValues(defaultDesign, {'ballast.masses': masses.map(([mass, at]) => ({mass: mass * g, at: at * 1e-3}))});

/** As a reader reads a mass and weighs it out. */
function asRead(mass: number): number {
  const read = readQuantity(writeQuantity(mass, 'mass', {system: 'metric'}), 'mass');
  if (!read.ok) throw new Error('not read');
  return read.value;
}

describe('the weights for a balance', () => {
  it('bring it into its target in the grams that are written, at places on the body', () => {
    let asked = 0;
    fc.assert(fc.property(anyGlider, (design) => {
      const plane = balanced(design), weights = weightsForBalance(design);
      if (plane.heavy === 'neither') { expect(weights.ok && weights.value).to.equal(undefined); return; }
      if (!weights.ok || !weights.value) return;
      asked++;
      const {masses, on, off, heavy, after} = weights.value;
      expect(heavy).to.equal(plane.heavy);
      const then = balanced(withValues(design, {'ballast.masses': masses}));
      expect(then.heavy).to.equal('neither');
      expect(then.at).to.be.closeTo(after.at, 1e-5);
      if (on) expect(on.at).to.be.within(0, design.body.length);
      const written = [...design.ballast.masses.filter((one) => !off.some(({at, mass, left}) => at === one.at && Math.abs(mass + left - one.mass) < 1e-7)),
        ...off.map(({at, left}) => ({at, mass: asRead(left)})), ...on ? [{at: on.at, mass: asRead(on.mass)}] : []];
      expect(balanced(withValues(design, {'ballast.masses': written})).heavy).to.equal('neither');
    }), {numRuns: 200});
    expect(asked).to.be.greaterThan(100);
  });

  it('go where the design says that weights go, and on the body where it says otherwise', () => {
    const at = (place: number): WeightsForBalance => needed(withValues(defaultDesign, {'ballast.at': place}));
    expect(at(0.03).on?.at).to.equal(0.03);
    expect(at(-0.02).on?.at).to.equal(0);
    // behind the target it would be of no use
    expect(at(0.4).on?.at).to.equal(0.015);
    const {on} = needed(withValues(defaultDesign, {'ballast.at': 2, 'measured.mass': 60 * g, 'measured.balance': 0.01}));
    expect(on?.at).to.equal(defaultDesign.body.length);
  });

  it('come off the nose that has too many, and none goes on the tail', () => {
    const {off, on, masses, heavy} = needed(weighted([60, 10]));
    expect([heavy, on, off.length]).to.deep.equal(['nose', undefined, 1]);
    const {mass, left} = off[0] ?? {mass: NaN, left: NaN};
    expect(mass + left).to.be.closeTo(60 * g, 1e-9);
    expect(masses).to.deep.equal([{mass: left, at: 0.01}]);
  });

  it('come off one after the other, the furthest out first', () => {
    const {off, masses} = needed(weighted([5, 5], [60, 30]));
    expect(off.map(({at}) => at)).to.deep.equal([0.005, 0.03]);
    expect(off[0]?.left).to.equal(0);
    expect(masses).to.have.length(1);
  });

  it('come off the tail before any goes on the nose', () => {
    const bare = needed(weighted()), {off, on} = needed(weighted([9, 500]));
    expect(off).to.deep.equal([{mass: 0.009, left: 0, at: 0.5}]);
    expect(on).to.deep.equal(bare.on);
  });

  it('go on the tail where no weight is fitted to come off', () => {
    const {off, on} = needed(withValues(defaultDesign, {'measured.mass': 60 * g, 'measured.balance': 0.01}));
    expect(off).to.deep.equal([]);
    expect(on?.at).to.be.within(0.5, defaultDesign.body.length);
  });

  it('add up with what lies there already', () => {
    const bare = needed(weighted()), place = (bare.on?.at ?? 0) * 1e3;
    const {on} = needed(weighted([10, place]));
    expect(on?.together).to.equal(bare.on?.mass);
    expect(on?.mass).to.be.closeTo((bare.on?.mass ?? 0) - 10 * g, 1e-9);
  });
});

describe('a plane that no hand could throw', () => {
  const weighing = (mass: number): GliderDesign => withValues(defaultDesign, {'measured.mass': mass, 'measured.balance': 0.1});
  /** So nearly too heavy that some of the coins that would bring it into its target make it so. */
  const narrow = {
    'wing.span': 0.7648, 'wing.chord': 0.07011, 'wing.tipChord': 0.05117, 'wing.sweep': -0.03202, 'wing.creases': [{at: 0.02}, {at: 0.05}],
    'wing.joints': [{angle: 0.00175, at: 0.15}], 'board.arealMass': 0.3128, 'body.length': 0.7964, 'body.layers': 1, 'tail.span': 0.2718, 'tail.chord': 0.09976, 'tail.fins.count': 0,
    'arrangement.wingAt': 0.0725, 'arrangement.tailAt': 0.32228, 'ballast.at': 0, 'ballast.masses': [{mass: 0.05754, at: 0.14235}], 'measured.mass': 0.16398, 'balance.marginLow': 0.1439,
  };
  const codesOf = (outcome: Outcome<unknown>): readonly string[] => outcome.ok ? [] : outcome.problems.map(({code}) => code);

  it('is told no balance, as it is told no flight, and the same field is to blame', () => {
    let heavy = 0;
    for (const values of [{'ballast.masses': [{mass: 9, at: 0.01}]}, {'measured.mass': 2}, {'wing.weighed': 5}, {'board.arealMass': 9}, {'measured.mass': 0.5}, {'measured.mass': 0.51}]) {
      const design = withValues(defaultDesign, values), balance = throwableBalance(design), plane = flyingPlane(design);
      expect(balance.ok, JSON.stringify(values)).to.equal(plane.ok);
      if (balance.ok || plane.ok) continue;
      heavy++;
      expect(balance.problems).to.deep.equal(plane.problems);
      expect([codesOf(balance), codesOf(balancePlan(design, {})), codesOf(weightsForBalance(design))]).to.deep.equal([['too-heavy-to-throw'], ['too-heavy-to-throw'], ['too-heavy-to-throw']]);
    }
    expect(heavy).to.equal(5);
  });

  it('is never made by the weights advised', () => {
    const plan = balancePlan(weighing(0.4), {});
    if (!plan.ok) throw new Error('no plan');
    expect(plan.value.plane.heavy).to.equal('tail');
    expect([codesOf(plan.value.remedy), codesOf(plan.value.weights), plan.value.advice]).to.deep.equal([['too-heavy-to-throw'], ['too-heavy-to-throw'], undefined]);
    const pieces = [...coins, ...washers].map((piece) => balancePlan(withValues(defaultDesign, narrow), {piece}));
    const found = pieces.map((one) => (one.ok && one.value.whole?.ok ? throwableBalance(withValues(one.value.lightened.design, {
      'ballast.masses': [...one.value.lightened.design.ballast.masses, {mass: one.value.whole.value.mass, at: one.value.whole.value.place}],
    })).ok : undefined));
    expect(found).to.include(true).and.not.include(false);
    const lighter = balancePlan(weighing(0.35), {});
    expect(lighter.ok && lighter.value.advice?.mass).to.be.greaterThan(0.09);
  });
});
