import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {leastRooms} from '../../../../src/calc/sheet/engine/least.js';
import {finished} from '../../../../src/calc/stepwise.js';
import {board, foundIn, job, plate} from './found-check.js';

const kind = (length: number, width: number, mayTurn = true) => ({length, width, mayTurn, area: length * width});

describe('the number of sheets that nothing can do with fewer of', () => {
  it('counts what cannot lie side by side, where area says nothing', () => {
    // 6 × 6 on 10 × 10: each needs a sheet, though by area four would do
    expect(finished(leastRooms([kind(6, 6)], [10], {length: 10, width: 10}))).to.equal(10);
    // 5 × 5: four to a sheet
    expect(finished(leastRooms([kind(5, 5)], [10], {length: 10, width: 10}))).to.equal(3);
    // 4 × 10: two to a sheet, whichever way round
    expect(finished(leastRooms([kind(4, 10)], [6], {length: 10, width: 10}))).to.equal(3);
    // turned it would lie three to a sheet
    expect(finished(leastRooms([kind(6, 3, false)], [4], {length: 11, width: 6}))).to.equal(2);
    expect(finished(leastRooms([kind(6, 3)], [4], {length: 12, width: 6}))).to.equal(1);
  });

  it('is proved for as many sheets as halves make', () => {
    const found = foundIn(20, job([plate('half', 0.36, 0.36, {count: 7})], [board(0.7, 0.5)]));
    expect(found.sheets).to.have.lengthOf(7);
    expect(found).to.include({least: 7, fewest: true});
  });

  it('takes the knife’s gap into account', () => {
    const parts = [plate('half', 0.35, 0.5, {count: 4, mayTurn: false})];
    expect(foundIn(20, job(parts, [board(0.7, 0.5)])).least).to.equal(2);
    expect(foundIn(20, job(parts, [board(0.7, 0.5)], {gap: 0.001})).least).to.equal(4);
    expect(foundIn(20, job(parts, [board(0.7, 0.5)], {gap: 0.001, cuts: 'free'})).least).to.equal(4);
  });

  it('is never more than what a layout made by construction needs', () => {
    fc.assert(fc.property(
      fc.integer({min: 1, max: 4}), fc.array(fc.tuple(fc.nat(), fc.boolean(), fc.integer({min: 1, max: 99})), {maxLength: 30}), fc.boolean(),
      (sheets, cuts, mayTurn) => {
        // sheets of 60 × 40 sliced at random
        const pieces = Array.from({length: sheets}, () => ({length: 60, width: 40}));
        for (const [which, along, share] of cuts) {
          const i = which % pieces.length;
          const piece = pieces[i];
          if (!piece) continue;
          const at = Math.round((along ? piece.width : piece.length) * share / 100);
          const off = along ? {...piece, width: at} : {...piece, length: at};
          const rest = along ? {...piece, width: piece.width - at} : {...piece, length: piece.length - at};
          if ([off, rest].some(({length, width}) => length * width === 0)) continue;
          pieces.splice(i, 1, off, rest);
        }
        const least = finished(leastRooms(pieces.map(({length, width}) => kind(length, width, mayTurn)), pieces.map(() => 1), {length: 60, width: 40}));
        expect(least).to.equal(sheets);
      },
    ), {numRuns: 300});
  });
});
