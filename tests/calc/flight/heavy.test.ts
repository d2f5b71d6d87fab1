import {expect} from '@open-wc/testing';
import {planeBalance} from '../../../src/calc/balance/plane-balance.js';
import {touching} from '../../../src/calc/balance/touching.js';
import {weightsForBalance} from '../../../src/calc/balance/weights-for-balance.js';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {callsOf} from '../../../src/calc/flight/calls.js';
import {flightCheck} from '../../../src/calc/flight/flight-check.js';
import {problemBehindLimit} from '../../../src/calc/trim-advice/limit.js';
import {flight, planeOf, valueOf} from './planes.js';

/** What each of those who judge a balance says of it. */
function judged(design: GliderDesign): readonly (string | undefined)[] {
  const {heavy} = valueOf(planeBalance(design)), calls = callsOf(flight(design)), {measures, first} = valueOf(flightCheck(design));
  const standing = (id: string): string | undefined => measures.find((one) => one.id === id)?.standing;
  const behind = problemBehindLimit(planeOf(design));
  expect(behind !== undefined).to.equal(heavy === 'tail');
  return [
    heavy, first?.heavy ?? 'neither', calls.has('forward') ? 'tail' : calls.has('back') ? 'nose' : 'neither',
    ({below: 'tail', above: 'nose', within: 'neither'} as Record<string, string>)[standing('staticMargin') ?? ''],
    ({above: 'tail', below: 'nose', within: 'neither'} as Record<string, string>)[standing('balance') ?? ''],
  ];
}

describe('whether a plane balances', () => {
  it('is judged alike by all who judge it, at the very edges of its target too', () => {
    const {target, wingAt} = valueOf(planeBalance(defaultDesign)), heard = new Set<string | undefined>();
    for (const edge of [target.from, target.to]) {
      for (const off of [-2, -1.1, -0.9, -1e-6, 0, 1e-6, 0.9, 1.1, 2]) {
        const said = new Set(judged(withValues(defaultDesign, {'measured.mass': 0.09, 'measured.balance': edge - wingAt + off * touching})));
        expect([...said], `${String(edge)} ${String(off)}`).to.have.length(1);
        for (const one of said) heard.add(one);
      }
    }
    expect([...heard].sort()).to.deep.equal(['neither', 'nose', 'tail']);
  });

  it('is judged alike where the builder wants one static margin and no other', () => {
    for (const margin of [0.1, 0.15, 0.2, 0.27]) {
      const design = withValues(defaultDesign, {'balance.marginLow': margin, 'balance.marginHigh': margin});
      const weights = valueOf(weightsForBalance(design));
      const weighted = withValues(design, {'ballast.masses': weights?.masses ?? []});
      expect(judged(weighted), String(margin)).to.deep.equal(Array.from({length: 5}, () => 'neither'));
    }
  });
});
