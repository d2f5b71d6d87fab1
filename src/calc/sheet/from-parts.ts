import type {GliderDesign} from '../design/design.js';
import {partsOf, type Part, type PartId} from '../parts/parts.js';
import {good, refused, type Outcome, type Problem} from '../problem.js';
import type {Leftover, PartToPlace, SheetStock} from './layout.js';
import {lowerBoundSheets} from './lower-bound.js';
import {mostKits, placeKits, type AlikeSheets} from './place-kits.js';
import {plansOf, type SheetPlan} from './plans.js';
import {remember} from './remember.js';

/** The most gliders that are laid out at once, and the most sheets. */
export const mostGliders = 40;

/** What a sheet is cut from: the parts of a design that the layout reads. */
export type ToCut = Pick<GliderDesign, 'wing' | 'body' | 'tail' | 'arrangement' | 'board'>;

/** A part that found no place, why, and how many pieces of it are missing. */
export interface LeftOut {
  readonly id: PartId;
  readonly count: number;
  readonly problem: Problem;
}

/** Everything to cut for a number of gliders, sheet by sheet. Lengths in m, areas in m². */
export interface CutSheets {
  readonly kits: number;
  readonly stock: SheetStock;
  readonly parts: readonly Part[];
  readonly sheets: number;
  /** No layout can do with fewer: by area. */
  readonly least: number;
  readonly plans: readonly SheetPlan[];
  /** Only what could be placed is on the sheets; the rest is here. */
  readonly leftOut: readonly LeftOut[];
  /** The largest rectangle worth keeping on the last sheet. */
  readonly leftover: Leftover | undefined;
  /** Area of the pieces placed, and of the sheets they come from. */
  readonly usedArea: number;
  readonly sheetArea: number;
  /** What every sheet cut alike would take, where several gliders are cut. */
  readonly alike: AlikeSheets | undefined;
}

const stockOf = ({length, width, margin, gap}: GliderDesign['board']): SheetStock => ({length, width, margin, gap});

/** What a layout reads of parts. */
export const toPlace = (parts: readonly Part[]): readonly PartToPlace[] =>
  parts.map(({id, outline, count, mayTurn, mayTurnHalf, liesAcross, mayMirror}) => ({id, outline, count, mayTurn, mayTurnHalf, liesAcross, mayMirror}));

/** No layout of so many gliders can do with fewer sheets: by area. */
export const leastByArea = (parts: readonly Part[], stock: SheetStock, kits: number): number =>
  lowerBoundSheets(toPlace(parts).map((part) => ({...part, count: part.count * kits})), stock);

/** A problem of the whole sheet beside the dimension that is to blame. */
const atItsPath = (problem: Problem): Problem => problem.code === 'margin-too-wide'
  ? {code: problem.code, path: 'board.margin', args: {edge: problem.args?.['margin'] ?? 0, length: problem.args?.['length'] ?? 0, width: problem.args?.['width'] ?? 0}}
  : problem;

const layOut = remember((parts: readonly Part[], stock: SheetStock, kits: number): Outcome<CutSheets> => {
  const pieces = toPlace(parts);
  const placed = placeKits(pieces, stock, kits);
  if (!placed.ok) return refused(...placed.problems.map(atItsPath));
  const {layout, alike} = placed.value;
  const leftOut = parts.flatMap(({id}): LeftOut[] => {
    const missing = layout.unplaced.filter((piece) => piece.id === id);
    return missing[0] ? [{id, count: missing.length, problem: missing[0].problem}] : [];
  });
  return good({
    kits, stock, parts, alike, leftOut,
    sheets: layout.sheets,
    least: leastByArea(parts, stock, kits),
    plans: plansOf(layout, parts),
    leftover: layout.leftover,
    usedArea: layout.usedArea,
    sheetArea: layout.sheets * stock.length * stock.width,
  });
});

/**
 * The parts of so many gliders laid out on sheets of the board at hand. The same object as long as nothing that is cut
 * changes, so a wing that is only folded another way is not laid out again.
 *
 * Parts too big for the sheet are left out and named; refused are clashes that leave a part without an outline, and
 * 'margin-too-wide' {edge, length, width} at board.margin.
 */
export function cutSheets({wing, body, tail, arrangement, board}: ToCut, kits: number): Outcome<CutSheets> {
  const {parts, problems} = partsOf(wing, body, tail, arrangement, board);
  return problems.length > 0 ? refused(...problems) : layOut(parts, stockOf(board), kits);
}

/** So many gliders laid out on at most so many sheets; undefined where that was not found to go. */
export function cutFrom(sheets: number, design: ToCut, kits: number): CutSheets | undefined {
  const {parts, problems} = partsOf(design.wing, design.body, design.tail, design.arrangement, design.board);
  if (problems.length > 0 || leastByArea(parts, stockOf(design.board), kits) > sheets) return undefined;
  const cut = layOut(parts, stockOf(design.board), kits);
  return cut.ok && cut.value.leftOut.length === 0 && cut.value.sheets <= sheets ? cut.value : undefined;
}

/** How many gliders a number of sheets gives. */
export interface GlidersFromBoard {
  /** 0 where the sheets are too few for one, or a part does not fit any sheet. */
  readonly gliders: number;
  /** Those gliders laid out; with none, what one would take. */
  readonly cut: CutSheets;
}

const glidersOf = remember((parts: readonly Part[], stock: SheetStock, sheets: number): Outcome<GlidersFromBoard> => {
  const pieces = toPlace(parts);
  const perSheet = mostKits(1, pieces, stock, mostGliders);
  let gliders = Math.min(mostGliders, Math.max(perSheet * sheets, mostKits(sheets, pieces, stock, mostGliders)));
  while (gliders > 0 && gliders < mostGliders) {
    const more = layOut(parts, stock, gliders + 1);
    if (!more.ok || more.value.sheets > sheets || more.value.leftOut.length > 0) break;
    gliders++;
  }
  const cut = layOut(parts, stock, Math.max(gliders, 1));
  return cut.ok ? good({gliders, cut: cut.value}) : cut;
});

/** The most gliders, up to {@link mostGliders}, that so many sheets give; refused as {@link cutSheets}. */
export function glidersFromBoard({wing, body, tail, arrangement, board}: ToCut, sheets: number): Outcome<GlidersFromBoard> {
  const {parts, problems} = partsOf(wing, body, tail, arrangement, board);
  return problems.length > 0 ? refused(...problems) : glidersOf(parts, stockOf(board), sheets);
}
