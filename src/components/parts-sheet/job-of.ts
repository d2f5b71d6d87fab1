import {partsOf, type PartId} from '../../calc/parts/parts.js';
import type {Board, HeldPiece, Job, WayToCut} from '../../calc/sheet/engine/job.js';
import {leastByArea, mostGliders, toPlace, type CutSheets, type ToCut} from '../../calc/sheet/from-parts.js';
import type {Sought} from '../../calc/sheet/sought.js';
import {leastSteps, spanOf, stepsIn} from '../../calc/sheet/span-steps.js';
import {ownBoard} from './laid-out.js';

/** Where so many sheets are given and something else is asked of them: how many gliders, or how long a wing; and the answer that was there at once. */
export type Most =
  | {readonly what: 'gliders'; readonly sheets: number; readonly gliders: number}
  | {readonly what: 'span'; readonly sheets: number; readonly span: number | undefined; readonly design: ToCut; readonly step: number};

/** What a layout is looked for: the parts of the first placement, and all that it did not ask about. */
export interface Asked {
  readonly first: CutSheets;
  readonly cuts: WayToCut;
  /** Sheets of the design's board; undefined for as many as needed. */
  readonly ownCount: number | undefined;
  readonly most: Most | undefined;
  readonly others: readonly Board[];
  readonly splice: readonly PartId[];
  readonly held: readonly HeldPiece[];
}

/** Which design it was does not matter as long as the same is cut from it. */
const sameMost = (a: Most | undefined, b: Most | undefined): boolean => a?.what === b?.what && a?.sheets === b?.sheets
  && (a?.what !== 'span' || b?.what !== 'span' || a.step === b.step);

/** Whether a layout for one is a layout for the other. */
export function sameAsked(a: Asked | undefined, b: Asked, but: 'held' | 'nothing' = 'nothing'): boolean {
  return a?.first === b.first && a.cuts === b.cuts && a.ownCount === b.ownCount && sameMost(a.most, b.most) && a.others === b.others
    && a.splice.join() === b.splice.join() && (but === 'held' || a.held === b.held);
}

/** Whether the first placement is an answer to all of it. */
export const answersAtOnce = ({first, cuts, ownCount, splice, held}: Asked): boolean =>
  cuts === 'free' && held.length === 0 && (ownCount === undefined || first.sheets <= ownCount) && !first.leftOut.some(({id}) => splice.includes(id));

/** The number that was reached at once, where one is asked: gliders, or steps of the wing's length; undefined for none. */
export function reachedAtOnce({most}: Asked): number | undefined {
  if (most?.what === 'gliders') return most.gliders > 0 ? most.gliders : undefined;
  return most?.span === undefined ? undefined : stepsIn(most.span, most.step);
}

/** The same for the search; `reached` is a number that there is a layout for, of this question if it is known to be. */
export function soughtOf(asked: Asked, reached: number | undefined, isKnown: boolean): Sought {
  const {most} = asked;
  const known = isKnown && reached !== undefined;
  switch (most?.what) {
    case undefined: return {what: 'layout', job: jobOf(asked, asked.first.kits, asked.ownCount)};
    case 'gliders': return {what: 'gliders', job: jobOf(asked, 1, most.sheets), most: mostGliders, known, from: reached ?? 1};
    case 'span': {
      const {design: {wing}, step} = most;
      return {what: 'span', job: jobOf(asked, asked.first.kits, most.sheets), wing, step, known, from: reached ?? leastSteps(wing, step)};
    }
  }
}

function jobOf({first: {parts, stock}, cuts, others, splice, held}: Asked, kits: number, ownCount: number | undefined): Job {
  return {
    parts: toPlace(parts).map((part) => ({...part, count: part.count * kits, maySplice: splice.some((id) => id === part.id)})),
    boards: [{id: ownBoard, length: stock.length, width: stock.width, ...ownCount === undefined ? {} : {count: ownCount}}, ...others],
    margin: stock.margin, gap: stock.gap, cuts, held,
  };
}

/** What a layout for a number is cut from, as if it had been placed at once. */
export function firstAt({first, most}: Asked, n: number | undefined): CutSheets {
  if (n === undefined || !most) return first;
  const kits = most.what === 'gliders' ? n : first.kits;
  const parts = most.what === 'gliders' ? first.parts : withSpan(most.design, spanOf(n, most.step));
  return {...first, kits, parts, leftOut: [], least: leastByArea(parts, first.stock, kits)};
}

const withSpan = ({wing, body, tail, arrangement, board}: ToCut, span: number): CutSheets['parts'] => partsOf({...wing, span}, body, tail, arrangement, board).parts;
