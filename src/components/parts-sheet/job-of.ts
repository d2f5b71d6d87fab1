import type {PartId} from '../../calc/parts/part.js';
import type {Board, HeldPiece, Job, WayToCut} from '../../calc/sheet/engine/job.js';
import type {CutSheets} from '../../calc/sheet/from-parts.js';
import {ownBoard} from './laid-out.js';

/** What a layout is looked for: the parts of the first placement, and all that it did not ask about. */
export interface Asked {
  readonly first: CutSheets;
  readonly cuts: WayToCut;
  /** Sheets of the design's board; undefined for as many as needed. */
  readonly ownCount: number | undefined;
  /** Where the sheets are given and something else is asked: a layout on more of them is no answer. */
  readonly atMost: number | undefined;
  readonly others: readonly Board[];
  readonly splice: readonly PartId[];
  readonly held: readonly HeldPiece[];
}

/** Whether a layout for one is a layout for the other. */
export function sameAsked(a: Asked | undefined, b: Asked, but: 'held' | 'nothing' = 'nothing'): boolean {
  return a?.first === b.first && a.cuts === b.cuts && a.ownCount === b.ownCount && a.atMost === b.atMost && a.others === b.others
    && a.splice.join() === b.splice.join() && (but === 'held' || a.held === b.held);
}

/** Whether the first placement is an answer to all of it. */
export const answersAtOnce = ({first, cuts, ownCount, splice, held}: Asked): boolean =>
  cuts === 'free' && held.length === 0 && (ownCount === undefined || first.sheets <= ownCount) && !first.leftOut.some(({id}) => splice.includes(id));

/** The same for the search. */
export function jobOf({first: {parts, kits, stock}, cuts, ownCount, others, splice, held}: Asked): Job {
  return {
    parts: parts.map(({id, outline, count, mayTurn, mayMirror}) => ({id, outline, mayTurn, mayMirror, count: count * kits, maySplice: splice.includes(id)})),
    boards: [{id: ownBoard, length: stock.length, width: stock.width, ...ownCount === undefined ? {} : {count: ownCount}}, ...others],
    margin: stock.margin, gap: stock.gap, cuts, held,
  };
}
