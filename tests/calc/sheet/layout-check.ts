import {expect} from '@open-wc/testing';
import {mirrored, quarterTurned, type Polygon} from '../../../src/calc/geometry/polygon/index.js';
import {placeParts, type Layout, type PartToPlace, type SheetStock} from '../../../src/calc/sheet/index.js';
import {cornerGap, sharedArea} from '../geometry/polygon/outlines.js';

export const part = (id: string, outline: Polygon, more: Partial<PartToPlace> = {}): PartToPlace =>
  ({id, outline, count: 1, mayTurn: true, mayMirror: false, ...more});

export const stock = (length: number, width: number, more: Partial<SheetStock> = {}): SheetStock =>
  ({length, width, margin: 0, gap: 0, ...more});

export function layoutOf(parts: readonly PartToPlace[], sheet: SheetStock): Layout {
  const outcome = placeParts(parts, sheet);
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}

const edges = (polygon: Polygon) => ({
  left: Math.min(...polygon.map(({x}) => x)), right: Math.max(...polygon.map(({x}) => x)),
  low: Math.min(...polygon.map(({y}) => y)), high: Math.max(...polygon.map(({y}) => y)),
});

/** Checks everything a layout must never get wrong, with none of the code that made it. */
export function expectSound(layout: Layout, parts: readonly PartToPlace[], sheet: SheetStock): void {
  const {length, width, margin, gap, count} = sheet;
  const near = 1e-8;
  for (const {id, outline, mayTurn, mayTurnHalf, liesAcross, mayMirror, count: wanted} of parts) {
    const placed = layout.placed.filter((piece) => piece.id === id);
    const copies = [...placed, ...layout.unplaced.filter((piece) => piece.id === id)].map(({copy}) => copy);
    expect(copies.sort((a, b) => a - b), `copies of ${id}`).to.deep.equal(Array.from({length: wanted}, (_, i) => i));
    for (const piece of placed) {
      if (!mayTurn) expect(piece.turn, `turn of ${id}`).to.be.oneOf([...liesAcross ? [90] : [0], ...mayTurnHalf ? [liesAcross ? 270 : 180] : []]);
      if (!mayMirror) expect(piece.mirrored, `mirroring of ${id}`).to.equal(false);
      // the piece is the part itself, turned over and turned as it says, with its corner where it says
      const same = quarterTurned(piece.mirrored ? mirrored(outline) : outline, piece.turn / 90);
      const from = edges(same), to = edges(piece.outline);
      expect(to.left).to.be.closeTo(piece.x, near);
      expect(to.low).to.be.closeTo(piece.y, near);
      piece.outline.forEach(({x, y}, i) => {
        expect(x - piece.x).to.be.closeTo((same[i]?.x ?? NaN) - from.left, near);
        expect(y - piece.y).to.be.closeTo((same[i]?.y ?? NaN) - from.low, near);
      });
      expect(to.left, `left of ${id}`).to.be.at.least(margin - near);
      expect(to.low, `bottom of ${id}`).to.be.at.least(margin - near);
      expect(to.right, `right of ${id}`).to.be.at.most(length - margin + near);
      expect(to.high, `top of ${id}`).to.be.at.most(width - margin + near);
      expect(piece.sheet).to.be.within(0, layout.sheets - 1);
    }
  }
  expect(layout.placed.length + layout.unplaced.length).to.equal(parts.reduce((sum, each) => sum + each.count, 0));
  expect(layout.sheets).to.be.at.most(count ?? Infinity);
  expect(new Set(layout.placed.map((piece) => piece.sheet)).size, 'sheets used').to.equal(layout.sheets);
  layout.placed.forEach((a, i) => {
    for (const b of layout.placed.slice(i + 1)) {
      if (a.sheet === b.sheet) expectApart(a.outline, b.outline, gap, `${a.id} and ${b.id}`);
    }
  });
  const {leftover} = layout;
  if (!leftover) return;
  expect(leftover.sheet).to.equal(layout.sheets - 1);
  const {x, y} = leftover;
  const kept: Polygon = [
    {x, y}, {x: x + leftover.length, y}, {x: x + leftover.length, y: y + leftover.width}, {x, y: y + leftover.width},
  ];
  const to = edges(kept);
  expect(Math.min(to.left, to.low)).to.be.at.least(margin - near);
  expect(to.right).to.be.at.most(length - margin + near);
  expect(to.high).to.be.at.most(width - margin + near);
  for (const piece of layout.placed) {
    if (piece.sheet === leftover.sheet) expectApart(piece.outline, kept, gap, `${piece.id} and the leftover`);
  }
}

function expectApart(a: Polygon, b: Polygon, gap: number, which: string): void {
  const p = edges(a), q = edges(b);
  // bounds a gap apart settle it; the outlines need a look only where pieces are nested
  const apart = Math.max(q.left - p.right, p.left - q.right, q.low - p.high, p.low - q.high);
  if (apart >= gap - 1e-8) return;
  expect(sharedArea(a, b), `area shared by ${which}`).to.be.below(1e-9);
  expect(cornerGap(a, b), `gap between ${which}`).to.be.at.least(gap - 1e-8);
}
