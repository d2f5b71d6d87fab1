import {expect} from '@open-wc/testing';
import type {JobPart} from '../../../../src/calc/sheet/engine/index.js';
import {randomFrom, type Random} from '../../../../src/calc/sheet/engine/random.js';
import {board, expectSound, foundIn, job, plate} from './found-check.js';

/** A sheet of whole centimetres sliced at random into so many pieces by cuts that take a gap, so that one sheet is known to do. */
function sliced(length: number, width: number, pieces: number, gap: number, random: Random): {length: number; width: number}[] {
  const cut = [{length, width}];
  for (let tries = 0; cut.length < pieces && tries < 1000; tries++) {
    const i = Math.floor(random() * cut.length);
    const piece = cut[i];
    if (!piece) continue;
    const along = random() < piece.width / (piece.length + piece.width);
    const size = (along ? piece.width : piece.length) - gap;
    const at = Math.round(100 * size * (0.2 + 0.6 * random())) / 100;
    if (at < 0.02 || size - at < 0.02) continue;
    cut.splice(i, 1, along ? {...piece, width: at} : {...piece, length: at}, along ? {...piece, width: size - at} : {...piece, length: size - at});
  }
  return cut;
}

const parts = (pieces: readonly {length: number; width: number}[]): JobPart[] =>
  pieces.map(({length, width}, i) => (i % 2 ? plate(`p${i}`, length, width) : plate(`p${i}`, width, length)));

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
