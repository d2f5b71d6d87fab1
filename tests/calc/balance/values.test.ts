import {expect} from '@open-wc/testing';
import {remedyOf} from '../../../src/calc/balance/remedy.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
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

  it('ask for the nose weight that the remedy asks for, and for none where none is needed', async () => {
    const remedy = remedyOf(balanced(defaultDesign), defaultDesign);
    const needed = await valueOf('mass.noseNeeded');
    expect(remedy.ok && remedy.value?.middle.mass).to.equal(needed);
    expect(await valueOf('mass.noseNeeded', withValues(defaultDesign, {'ballast.masses': [{mass: needed, at: defaultDesign.ballast.at}]}))).to.equal(0);
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
