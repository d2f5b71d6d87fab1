import {expect} from '@open-wc/testing';
import {SheetSearch, type WayToCut} from '../../src/calc/sheet/engine/index.js';

/**
 * Rectangles made of unequal squares without a gap. Z. Moroń, O rozkładach prostokątów na kwadraty (1925): 32 × 33 of nine.
 * A. J. W. Duijvestijn, Simple perfect squared square of lowest order (1978): 112 × 112 of twenty-one. From memory; the
 * areas are checked below, and that the squares fit is shown by the layouts found.
 */
const ofNine = [1, 4, 7, 8, 9, 10, 14, 15, 18];
const ofTwentyOne = [2, 4, 6, 7, 8, 9, 11, 15, 16, 17, 18, 19, 24, 25, 27, 29, 33, 35, 37, 42, 50];

const square = (side: number) => [{x: 0, y: 0}, {x: side, y: 0}, {x: side, y: side}, {x: 0, y: side}];

/** How much of a roll so wide the squares take, in so many steps of the search. Sides in cm. */
function lengthOf(sides: readonly number[], width: number, cuts: WayToCut, steps: number): number {
  const parts = sides.map((side) => ({id: `square ${side}`, outline: square(side / 100), count: 1, mayTurn: true, mayMirror: false}));
  let now = 0;
  const search = new SheetSearch({parts, boards: [{id: 'roll', length: Infinity, width: width / 100}], margin: 0, gap: 0, cuts}, {now: () => now++});
  search.work(steps);
  const [sheet, ...others] = search.found?.sheets ?? [];
  expect(others).to.deep.equal([]);
  // each square once, side by side: that they do not overlap follows from their area where they take no more than that
  const placed = sheet?.cutouts.flatMap(({pieces}) => pieces) ?? [];
  expect(placed.map(({id}) => id).sort()).to.deep.equal(parts.map(({id}) => id).sort());
  placed.forEach((a, i) => {
    const side = Number(a.id.slice(7)) / 100;
    expect(a.x).to.be.at.least(0);
    expect(a.y).to.be.within(0, width / 100 - side + 1e-9);
    for (const b of placed.slice(i + 1)) {
      const other = Number(b.id.slice(7)) / 100;
      const apart = Math.max(b.x - a.x - side, a.x - b.x - other, b.y - a.y - side, a.y - b.y - other);
      expect(apart, `${a.id} and ${b.id}`).to.be.above(-1e-9);
    }
  });
  return (sheet?.length ?? NaN) * 100;
}

describe('squared rectangles as strips', () => {
  it('have the area that is published', () => {
    const area = (sides: readonly number[]): number => sides.reduce((sum, side) => sum + side * side, 0);
    expect(area(ofNine)).to.equal(32 * 33);
    expect(area(ofTwentyOne)).to.equal(112 * 112);
  });

  it('nine squares are laid without a gap, on a roll either way wide', () => {
    expect(lengthOf(ofNine, 33, 'free', 60)).to.be.closeTo(32, 1e-6);
    expect(lengthOf(ofNine, 32, 'free', 60)).to.be.closeTo(33, 1e-6);
  });

  it('twenty-one squares take at most 3 % more than the square they make', () => {
    expect(lengthOf(ofTwentyOne, 112, 'free', 800)).to.be.at.most(1.03 * 112 + 1e-6);
  });

  it('cannot be cut edge to edge as they stand, and then take at most an eighth more', () => {
    const nine = lengthOf(ofNine, 33, 'straight', 300);
    expect(nine).to.be.within(33, 36 + 1e-6);
    expect(lengthOf(ofTwentyOne, 112, 'straight', 300)).to.be.within(113, 112 * 1.125);
  });
});
