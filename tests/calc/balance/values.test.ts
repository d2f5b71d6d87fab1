import {expect} from '@open-wc/testing';
import {weightsForBalance} from '../../../src/calc/balance/weights-for-balance.js';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {derivedValue} from '../../../src/calc/values.js';
import {balanced} from './gliders.js';

async function valueOf(name: string, design = defaultDesign): Promise<number> {
  const outcome = (await derivedValue(name))?.of(design);
  if (!outcome?.ok) throw new Error(`no ${name}`);
  return outcome.value;
}

describe('values of a balanced plane for a sentence', () => {
  it('are those of the plane', async () => {
    const plane = balanced(defaultDesign);
    expect(await valueOf('balance.point')).to.equal(plane.behindWing);
    expect(await valueOf('balance.target')).to.equal(plane.target.middle - plane.wingAt);
    expect(await valueOf('balance.neutralPoint')).to.equal(plane.neutralPoint);
    expect(await valueOf('balance.margin')).to.equal(plane.margin);
    expect(await valueOf('mass.total')).to.equal(plane.mass);
    expect(await valueOf('mass.wingLoading')).to.equal(plane.wingLoading);
    expect(await valueOf('mass.cubeLoading')).to.equal(plane.cubeLoading);
    expect(await valueOf('tail.volume')).to.equal(plane.handbook.tailVolume);
    expect(await valueOf('balance.targetFrom')).to.be.lessThan(await valueOf('balance.targetTo'));
  });

  it('stand on the neutral point that the flight flies by', async () => {
    for (const design of [defaultDesign, withValues(defaultDesign, {'wing.sweep': 0.05, 'wing.tipChord': 0.08, 'tail.fins.count': 1, 'body.layers': 3, 'arrangement.wingAt': 0.15})]) {
      expect(await valueOf('balance.neutralPoint', design)).to.be.closeTo(await valueOf('flight.neutralPoint', design), 1e-12);
      expect(await valueOf('balance.margin', design)).to.be.closeTo(await valueOf('flight.staticMargin', design), 1e-12);
    }
  });

  it('ask for the nose weight that the balance point names, as it is weighed out, and for none where none is needed', async () => {
    const named = (design: GliderDesign) => {
      const weights = weightsForBalance(design);
      return weights.ok ? weights.value : undefined;
    };
    const needed = await valueOf('mass.noseNeeded');
    expect(needed).to.equal(named(defaultDesign)?.on?.mass);
    expect(needed * 1e3).to.be.closeTo(Math.round(needed * 1e3), 1e-9).and.to.be.greaterThan(10);
    expect(await valueOf('mass.noseNeeded', withValues(defaultDesign, {'ballast.masses': [{mass: needed, at: defaultDesign.ballast.at}]}))).to.equal(0);
    // beside what lies there already, so much more
    const half = withValues(defaultDesign, {'ballast.masses': [{mass: 0.015, at: defaultDesign.ballast.at}]});
    expect(await valueOf('mass.noseNeeded', half)).to.be.closeTo(needed - 0.015, 1e-9);
    // once what is too much at the tail is off, the nose needs no more than without it
    const tailed = withValues(defaultDesign, {'ballast.masses': [{mass: 0.01, at: 0.6}]});
    expect(named(tailed)?.off).to.have.length(1);
    expect(await valueOf('mass.noseNeeded', tailed)).to.equal(needed);
    // a heavy nose needs less, and nothing at the nose
    expect(await valueOf('mass.noseNeeded', withValues(defaultDesign, {'ballast.masses': [{mass: 0.08, at: 0.015}]}))).to.equal(0);
    expect(await valueOf('mass.noseNeeded', withValues(defaultDesign, {'measured.balance': 0.01, 'measured.mass': 0.08}))).to.equal(0);
  });

  it('are said to be about right until the plane has been measured', async () => {
    const measured = withValues(defaultDesign, {'measured.mass': 0.08, 'measured.balance': 0.05});
    const isAbout = async (name: string, design = defaultDesign) => {
      const about = (await derivedValue(name))?.about;
      return typeof about === 'function' ? about(design) : about;
    };
    expect(await Promise.all(['balance.point', 'mass.total', 'mass.cubeLoading'].map((name) => isAbout(name)))).to.deep.equal([true, true, true]);
    expect(await Promise.all(['balance.point', 'mass.total', 'mass.cubeLoading'].map((name) => isAbout(name, measured)))).to.deep.equal([false, false, false]);
    expect(await isAbout('balance.target', measured)).to.equal(true);
    expect(await isAbout('tail.volume')).to.equal(false);
  });

  it('have reasons where there are none', async () => {
    const outcome = (await derivedValue('balance.point'))?.of(withValues(defaultDesign, {'arrangement.tailAt': 0.05}));
    expect(outcome?.ok).to.equal(false);
  });
});
