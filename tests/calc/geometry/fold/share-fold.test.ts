import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {shareFold} from '../../../../src/calc/geometry/fold/share-fold.js';
import {between} from './bench.js';

describe('a whole fold shared among creases', () => {
  it('is equal unless it is told', () => {
    expect(shareFold(0.3, 3)).to.deep.equal([0.3 / 3, 0.3 / 3, 0.3 / 3]);
    expect(shareFold(0.3, 2, [2, 4])).to.deep.equal([0.3 / 6 * 2, 0.3 / 6 * 4]);
    expect(shareFold(0.3, 2, [0, 1])).to.deep.equal([0, 0.3]);
  });

  it('passes on what a shut groove cannot take, again and again', () => {
    const folds = shareFold(1, 3, undefined, [0.1, 0.4, undefined]);
    expect(folds[0]).to.equal(0.1);
    expect(folds[1]).to.equal(0.4);
    expect(folds[2]).to.be.closeTo(0.5, 1e-15);
  });

  it('adds up to the whole, or to all stops, with none beyond its own', () => {
    const creases = fc.array(fc.record({share: between(0.1, 5), stop: fc.option(between(0.01, 1), {nil: undefined})}), {minLength: 1, maxLength: 6});
    fc.assert(fc.property(creases, between(0, 2), (list, total) => {
      const stops = list.map(({stop}) => stop), folds = shareFold(total, list.length, list.map(({share}) => share), stops);
      const most = stops.reduce<number>((sum, stop) => sum + (stop ?? Infinity), 0);
      expect(folds.reduce((sum, fold) => sum + fold, 0)).to.be.closeTo(Math.min(total, most), 1e-12);
      folds.forEach((fold, i) => { expect(fold).to.be.at.most(stops[i] ?? Infinity); });
    }));
  });
});
