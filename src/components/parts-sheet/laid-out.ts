import {bounds} from '../../calc/geometry/polygon/index.js';
import type {Part} from '../../calc/parts/part.js';
import type {FoundSheet} from '../../calc/sheet/engine/job.js';
import type {CutSheets} from '../../calc/sheet/from-parts.js';
import type {CutPiece, SheetPlan} from '../../calc/sheet/plans.js';
import type {Problem} from '../../calc/problem.js';

/** The board of the design, among all boards at hand. */
export const ownBoard = 'own';

/** A plan with the sheet it is of: its board, and how to cut it where straight cuts can. Sheets in a row that are cut alike are one plan. */
export interface LaidPlan extends SheetPlan {
  readonly sheet: FoundSheet;
}

/** A part, or one of several lengths that are glued end to end to make it. */
export interface CutPart extends Part {
  readonly piece?: {readonly nth: number; readonly of: number};
}

/** Everything to cut, sheet by sheet, on whatever boards. */
export interface LaidOut extends Omit<CutSheets, 'plans'> {
  readonly plans: readonly LaidPlan[];
  /** No layout can do with fewer whole boards by area alone; nothing is said where other boards are at hand. */
  readonly byArea: number;
  /** Sheets among them that were left over from before. */
  readonly oldPieces: number;
  /** What somebody wanted and could not be had, such as a part held off the board. */
  readonly problems: readonly Problem[];
  /** Where it came from: laid out at once, or found by the search. */
  readonly from: 'first' | 'search';
}

/** The first placement, as if each of its sheets had been found; its bound holds where there are no other boards. */
export function firstLaidOut(cut: CutSheets, otherBoards: boolean): LaidOut {
  const {length, width} = cut.stock;
  const least = otherBoards ? 0 : cut.least;
  return {
    ...cut, least, byArea: least, oldPieces: 0, problems: [], from: 'first',
    plans: cut.plans.map((plan): LaidPlan => ({...plan, sheet: {
      board: {id: ownBoard, length, width}, held: undefined, length, width, plan: undefined, leftover: plan.leftover,
      cutouts: plan.pieces.map(({placed}) => ({...bounds(placed.outline), pieces: [placed]})),
    }})),
  };
}

/** Every piece with the plan it is on. */
export const piecesOf = ({plans}: LaidOut): readonly {readonly piece: CutPiece; readonly plan: LaidPlan}[] =>
  plans.flatMap((plan) => plan.pieces.map((piece) => ({piece, plan})));
