import type {Problem} from '../problem.js';
import type {PartToPlace, SheetStock} from './layout.js';
import {usable} from './shape.js';

/** More pieces than this are refused rather than left to keep a page waiting. */
export const mostPieces = 1000;

const isLength = (length: number) => Number.isFinite(length) && length >= 0;

/** What keeps a whole layout from being made; see `placeParts` for the codes. */
export function problemsOf(parts: readonly PartToPlace[], stock: SheetStock): Problem[] {
  const {length, width, margin, gap, count} = stock;
  const problems: Problem[] = [];
  if (!isLength(length) || !isLength(width) || !length || !width) {
    problems.push({code: 'sheet-not-positive', args: {length, width}});
  }
  if (!isLength(margin)) problems.push({code: 'margin-negative', args: {margin}});
  if (!isLength(gap)) problems.push({code: 'gap-negative', args: {gap}});
  if (count !== undefined && !(count === Infinity || Number.isSafeInteger(count) && count >= 0)) {
    problems.push({code: 'sheet-count-not-whole', args: {count}});
  }
  const room = usable(stock);
  if (!problems.length && !(room.length > 0 && room.width > 0)) {
    problems.push({code: 'margin-too-wide', args: {margin, length, width}});
  }
  let pieces = 0;
  for (const part of parts) {
    if (Number.isSafeInteger(part.count) && part.count >= 0) pieces += part.count;
    else problems.push({code: 'part-count-not-whole', args: {id: part.id, count: part.count}});
  }
  if (pieces > mostPieces) problems.push({code: 'too-many-parts', args: {count: pieces, most: mostPieces}});
  return problems;
}
