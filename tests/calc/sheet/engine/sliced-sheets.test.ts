import {expect} from '@open-wc/testing';
import {randomFrom} from '../../../../src/calc/sheet/engine/random.js';
import {board, expectSound, foundIn, job} from './found-check.js';
import {parts, sliced} from './sliced.js';

describe('sheets sliced at random by straight cuts', () => {
  it('are laid on a roll hardly longer than they were', () => {
    const random = randomFrom(7);
    let total = 0;
    const rolls = 20;
    for (let n = 0; n < rolls; n++) {
      const what = job(parts(sliced(1.2, 0.8, 8 + n, 0, random)), [board(Infinity, 0.8)]);
      const found = foundIn(1000, what, n);
      expectSound(found, what);
      const over = (found.sheets[0]?.length ?? NaN) / 1.2 - 1;
      expect(over).to.be.within(-1e-9, 0.06);
      total += over;
    }
    expect(total / rolls).to.be.below(0.01);
  });

  it('go back on as many sheets, or one more at most, the knife’s gap included', () => {
    const random = randomFrom(11);
    let needed = 0, used = 0;
    for (let n = 0; n < 12; n++) {
      const sheets = 1 + n % 4;
      const pieces = Array.from({length: sheets}, () => sliced(0.7, 0.5, 3 + n % 5, 0.002, random)).flat();
      const what = job(parts(pieces), [board(0.7, 0.5)], {gap: 0.002});
      const found = foundIn(600, what, n);
      expectSound(found, what);
      expect(found.sheets.length).to.be.within(sheets, sheets + 1);
      expect(found.least).to.be.at.most(sheets);
      needed += sheets;
      used += found.sheets.length;
    }
    expect(used - needed).to.be.at.most(2);
  });
});
