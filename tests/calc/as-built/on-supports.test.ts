import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {balanceOnSupports, withoutWeights} from '../../../src/calc/as-built/on-supports.js';

const lengths = fc.double({min: -0.3, max: 0.8, noNaN: true});

describe('a plane on one scale and two supports', () => {
  it('balances where the lever says', () => {
    // 80 g on supports 300 mm apart, the rear one carries 20 g: a quarter of the way back
    const place = (scale: 'front' | 'rear', reading: number): number => {
      const found = balanceOnSupports({front: -0.05, rear: 0.25, scale, reading, mass: 0.08});
      return found.ok ? found.value : NaN;
    };
    expect(place('rear', 0.02)).to.be.closeTo(0.025, 1e-15);
    expect(place('front', 0.06)).to.be.closeTo(0.025, 1e-15);
  });

  it('finds the centre of any two masses', () => {
    fc.assert(fc.property(lengths, lengths, fc.double({min: 0.001, max: 1, noNaN: true}), fc.double({min: 0.001, max: 1, noNaN: true}), (a, b, m, n) => {
      if (Math.abs(a - b) < 1e-3) return;
      const [front, rear, onFront, onRear] = a < b ? [a, b, m, n] : [b, a, n, m];
      const found = balanceOnSupports({front, rear, scale: 'rear', reading: onRear, mass: m + n});
      expect(found.ok && found.value).to.be.closeTo((onFront * front + onRear * rear) / (m + n), 1e-9);
    }));
  });

  it('is refused for what cannot be', () => {
    const code = (changed: object): string | undefined => {
      const found = balanceOnSupports({front: 0, rear: 0.2, scale: 'rear', reading: 0.02, mass: 0.08, ...changed});
      return found.ok ? undefined : found.problems[0]?.code;
    };
    expect(code({rear: -0.1})).to.equal('supports-crossed');
    expect(code({reading: 0.09})).to.equal('reading-above-mass');
    expect(code({reading: -0.01})).to.equal('reading-above-mass');
    expect(code({mass: 0})).to.equal('plane-without-mass');
    expect(code({rear: NaN})).to.equal('supports-crossed');
  });

  it('takes fitted weights off again by moments', () => {
    const bare = {mass: 0.06, at: 0.05}, weight = {mass: 0.02, at: -0.18};
    const whole = {mass: 0.08, at: (0.06 * 0.05 - 0.02 * 0.18) / 0.08};
    const found = withoutWeights(whole, [weight]);
    expect(found.ok && found.value.mass).to.be.closeTo(bare.mass, 1e-12);
    expect(found.ok && found.value.at).to.be.closeTo(bare.at, 1e-12);
    expect(withoutWeights({mass: 0.02, at: 0}, [weight]).ok).to.equal(false);
  });
});
