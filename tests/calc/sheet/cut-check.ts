import {expect} from '@open-wc/testing';
import {cutSheets, type CutSheets, type ToCut} from '../../../src/calc/sheet/from-parts.js';
import {expectSound} from './layout-check.js';

export function cutOf(design: ToCut, kits = 1): CutSheets {
  const cut = cutSheets(design, kits);
  if (!cut.ok) throw new Error(cut.problems.map(({code}) => code).join());
  return cut.value;
}

/** Checks sheets to be cut as a layout is checked: every piece there, on the board, apart from the others, not mirrored. */
export function expectSoundCut({kits, stock, parts, sheets, plans, leftOut, leftover, usedArea, sheetArea}: CutSheets): void {
  const copies = new Map<string, number>();
  const next = (id: string): number => {
    const copy = copies.get(id) ?? 0;
    copies.set(id, copy + 1);
    return copy;
  };
  const placed = plans.flatMap(({first, alike, pieces}) => Array.from({length: alike}, (_, i) =>
    pieces.map((piece) => ({...piece.placed, copy: next(piece.placed.id), sheet: first - 1 + i}))).flat());
  const unplaced = leftOut.flatMap(({id, count, problem}) => Array.from({length: count}, () => ({id, copy: next(id), problem})));
  expectSound({sheets, placed, unplaced, usedArea, wasteArea: sheetArea - usedArea, leftover}, parts.map((part) => ({...part, count: part.count * kits})), stock);
  const numbers = plans.flatMap(({pieces}) => pieces.map(({number}) => number)).sort((a, b) => a - b);
  expect(numbers).to.deep.equal(numbers.map((_, i) => i + 1));
}
