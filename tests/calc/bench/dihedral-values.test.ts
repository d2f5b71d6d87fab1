import {expect} from '@open-wc/testing';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../src/calc/design/design.js';
import {derivedValue} from '../../../src/calc/values.js';

async function value(name: string, design: GliderDesign): Promise<number | undefined> {
  const found = (await derivedValue(`dihedral.${name}`))?.of(design);
  return found?.ok ? found.value : undefined;
}

describe('dihedral in a sentence', () => {
  const angle = Math.PI / 18;
  const design = withValues(defaultDesign, {'wing.span': 0.6, 'wing.joints': [{angle, at: 0.1}, {angle: angle / 2, at: 0.2}]});

  it('speaks of the outermost joint and of the whole wing', async () => {
    expect(await value('panel', design)).to.be.closeTo(0.1, 1e-12);
    expect(await value('angle', design)).to.equal(angle / 2);
    expect(await value('block', design)).to.be.closeTo(0.1 * Math.sin(angle / 2), 1e-12);
    expect(await value('tipRise', design)).to.be.closeTo(0.1 * (Math.sin(angle) + Math.sin(1.5 * angle)), 1e-12);
    expect(await value('spanAsFlown', design)).to.be.closeTo(0.2 * (1 + Math.cos(angle) + Math.cos(1.5 * angle)), 1e-12);
    // constant chord: angle weighted by the lever, 1² to 2² and 2² to 3² out of 3²
    expect(await value('equivalent', design)).to.be.closeTo(angle * (3 + 1.5 * 5) / 9, 1e-12);
  });

  it('is nothing for a flat wing, and refused for a wing that cannot be', async () => {
    expect(await value('block', withValues(defaultDesign, {'wing.joints': []}))).to.equal(0);
    expect(await value('block', withValues(defaultDesign, {'wing.joints': [{angle, at: 3}]}))).to.equal(undefined);
  });
});
