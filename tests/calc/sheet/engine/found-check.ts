import {expect} from '@open-wc/testing';
import {mirrored, quarterTurned, type Polygon} from '../../../../src/calc/geometry/polygon/index.js';
import {mostPieces, SheetSearch, type Board, type Box, type Found, type FoundSheet, type Job, type JobPart} from '../../../../src/calc/sheet/engine/index.js';
import {cornerGap, rectangle, sharedArea} from '../../geometry/polygon/outlines.js';

export const part = (id: string, outline: Polygon, more: Partial<JobPart> = {}): JobPart =>
  ({id, outline, count: 1, mayTurn: true, mayMirror: false, ...more});

export const plate = (id: string, length: number, width: number, more: Partial<JobPart> = {}): JobPart =>
  part(id, rectangle(0, 0, length, width), more);

export const board = (length: number, width: number, more: Partial<Board> = {}): Board => ({id: 'board', length, width, ...more});

export const job = (parts: readonly JobPart[], boards: readonly Board[], more: Partial<Job> = {}): Job =>
  ({parts, boards, margin: 0, gap: 0, cuts: 'straight', ...more});

/** A clock that goes by one at every look, so that work for so many ms is so many steps, whatever the machine. */
export const stepClock = (): () => number => {
  let now = 0;
  return () => now++;
};

/** What a search finds in so many steps; the first layout at least. */
export function foundIn(steps: number, what: Job, seed = 1): Found {
  const search = new SheetSearch(what, {seed, now: stepClock()});
  search.work(steps);
  while (!search.found) search.work(1);
  return search.found;
}

const near = 1e-8;

const edges = (polygon: Polygon) => ({
  left: Math.min(...polygon.map(({x}) => x)), right: Math.max(...polygon.map(({x}) => x)),
  low: Math.min(...polygon.map(({y}) => y)), high: Math.max(...polygon.map(({y}) => y)),
});

const corners = ({x, y, length, width}: Box): Polygon => rectangle(x, y, length, width);

/** Checks everything a layout must never get wrong, with none of the code that made it. */
export function expectSound(found: Found, {parts, boards, margin, gap, cuts}: Job): void {
  const placed = found.sheets.flatMap(({cutouts}) => cutouts.flatMap(({pieces}) => pieces));
  const spliced = found.spliced.map(({id}) => id);
  for (const {id, outline, count, mayTurn, mayTurnHalf, liesAcross, mayMirror} of parts) {
    if (spliced.includes(id) || !Number.isSafeInteger(count) || count < 0 || count > mostPieces) continue;
    const own = placed.filter((piece) => piece.id === id);
    const copies = [...own, ...found.unplaced.filter((piece) => piece.id === id)].map(({copy}) => copy);
    expect(copies.sort((a, b) => a - b), `copies of ${id}`).to.deep.equal(Array.from({length: count}, (_, i) => i));
    for (const piece of own) {
      if (!mayTurn) expect(piece.turn, `turn of ${id}`).to.be.oneOf([...liesAcross ? [90] : [0], ...mayTurnHalf ? [liesAcross ? 270 : 180] : []]);
      if (!mayMirror) expect(piece.mirrored, `mirroring of ${id}`).to.equal(false);
      // the piece is the part itself, turned over and turned as it says, with its corner where it says
      const same = quarterTurned(piece.mirrored ? mirrored(outline) : outline, piece.turn / 90);
      const from = edges(same);
      piece.outline.forEach(({x, y}, i) => {
        expect(x - piece.x).to.be.closeTo((same[i]?.x ?? NaN) - from.left, near);
        expect(y - piece.y).to.be.closeTo((same[i]?.y ?? NaN) - from.low, near);
      });
    }
  }
  for (const {id, count = Infinity} of boards) {
    expect(found.sheets.filter((sheet) => sheet.board.id === id).length, `boards ${id}`).to.be.at.most(count);
  }
  found.sheets.forEach((sheet, i) => { expectSoundSheet(sheet, i, margin, gap, cuts); });
  if (found.unplaced.length === 0) {
    const fresh = found.sheets.filter((sheet) => !sheet.board.leftover).length;
    expect(fresh, 'sheets').to.be.at.least(found.least);
    expect(found.fewest).to.equal(fresh === found.least);
  }
}

function expectSoundSheet({board: {length, width}, cutouts, leftover, plan, ...sheet}: FoundSheet, index: number, margin: number, gap: number, cuts: Job['cuts']): void {
  expect(sheet.width).to.equal(width);
  if (Number.isFinite(length)) expect(sheet.length).to.equal(length);
  const pieces = cutouts.flatMap((cutout) => cutout.pieces);
  expect(pieces.length, 'a sheet is used').to.be.at.least(1);
  for (const piece of pieces) {
    expect(piece.sheet).to.equal(index);
    const to = edges(piece.outline);
    expect(Math.min(to.left, to.low), `${piece.id} on the board`).to.be.at.least(margin - near);
    expect(to.right, `right of ${piece.id}`).to.be.at.most(sheet.length - margin + near);
    expect(to.high, `top of ${piece.id}`).to.be.at.most(width - margin + near);
  }
  pieces.forEach((a, i) => {
    for (const b of pieces.slice(i + 1)) expectApart(a.outline, b.outline, gap, `${a.id} and ${b.id}`);
  });
  if (leftover) {
    const to = edges(corners(leftover));
    expect(Math.min(to.left, to.low)).to.be.at.least(margin - near);
    expect(to.right).to.be.at.most(sheet.length - margin + near);
    expect(to.high).to.be.at.most(width - margin + near);
    for (const piece of pieces) expectApart(piece.outline, corners(leftover), gap, `${piece.id} and the leftover`);
  }
  if (cuts === 'straight') expect(plan, 'a plan of straight cuts').to.not.equal(undefined);
}

function expectApart(a: Polygon, b: Polygon, gap: number, which: string): void {
  const p = edges(a), q = edges(b);
  // bounds a gap apart settle it; the outlines need a look only where pieces are nested
  const apart = Math.max(q.left - p.right, p.left - q.right, q.low - p.high, p.low - q.high);
  if (apart >= gap - near) return;
  expect(sharedArea(a, b), `area shared by ${which}`).to.be.below(1e-9);
  expect(cornerGap(a, b), `gap between ${which}`).to.be.at.least(gap - near);
}
