import {polygonDistance, polygonsOverlap, moved} from '../../geometry/polygon/index.js';
import type {Problem} from '../../problem.js';
import {memberAt} from '../block.js';
import {largestLeftover} from '../leftover.js';
import type {Pose, Shape} from '../shape.js';
import type {Stepwise} from '../../stepwise.js';
import type {Laid} from './field.js';
import type {Board, Box, HeldPiece, Job} from './job.js';
import {partingOf} from './parting.js';
import {planOf, uncut} from './plan.js';

/** A sheet on which pieces are held, and the upright rectangles that are free around them: there are several ways to see them. */
export interface HeldSheet {
  readonly sheet: number;
  readonly board: Board;
  readonly laid: readonly Laid[];
  readonly free: readonly Box[];
  readonly otherFree: readonly (readonly Box[])[];
}

/** Sheets with held pieces as they are, and with what is free around them seen in other ways. */
export function heldInOtherWays(held: readonly HeldSheet[]): readonly (readonly HeldSheet[])[] {
  const others = Math.max(0, ...held.map(({otherFree}) => otherFree.length));
  return [held, ...Array.from({length: others}, (_, i) => held.map((sheet) => ({...sheet, free: sheet.otherFree[i] ?? sheet.free})))];
}

/** Pieces looked at between two stops. */
const few = 10;

/**
 * The sheets on which pieces are held; and what cannot be held: 'held-unknown' {id, board}, 'held-cannot-lie' {id} (turned
 * or turned over against orders, or more copies than there are), 'held-off-board' {id, board}, 'held-too-near' {id, other},
 * 'held-not-straight' {id} (no cut runs edge to edge between it and those held before).
 */
export function* heldSheets(job: Job, boards: readonly Board[], shapes: readonly Shape[]): Stepwise<{readonly sheets: readonly HeldSheet[]; readonly problems: readonly Problem[]}> {
  const sheets = new Map<number, {board: Board; laid: Laid[]}>();
  const problems: Problem[] = [];
  for (const [i, piece] of (job.held ?? []).entries()) {
    if (i % few === few - 1) yield;
    const shape = shapes.find(({part}) => part.id === piece.id);
    const board = boards.find(({id}) => id === piece.board);
    if (!shape || !board) {
      problems.push({code: 'held-unknown', args: {id: piece.id, board: piece.board}});
      continue;
    }
    const pose = shape.poses.find(({quarters, mirrored}) => 90 * quarters === piece.turn && mirrored === piece.mirrored);
    const there = sheets.get(piece.sheet) ?? {board, laid: []};
    const copies = [...sheets.values()].flatMap(({laid}) => laid).filter(({members: [member]}) => member?.shape === shape).length;
    const problem = !pose || copies === shape.part.count || there.board !== board
      ? {code: 'held-cannot-lie', args: {id: piece.id}} : wrong(piece, pose, there, job);
    if (!pose || problem) {
      problems.push(problem ?? {code: 'held-cannot-lie', args: {id: piece.id}});
      continue;
    }
    there.laid.push(laidAs(piece, shape, pose));
    sheets.set(piece.sheet, there);
  }
  const found: HeldSheet[] = [];
  for (const [sheet, {board, laid}] of sheets) {
    const [free = [], ...otherFree] = yield* freeAround(laid, board, job);
    found.push({sheet, board, laid, free, otherFree});
  }
  return {problems, sheets: found};
}

const laidAs = ({x, y}: HeldPiece, shape: Shape, pose: Pose): Laid =>
  ({x, y, length: pose.length, width: pose.width, members: [memberAt(shape, pose, 0, 0)]});

const outlineOf = ({x, y, members: [member]}: Laid) =>
  moved(member?.shape.poses.find(({quarters, mirrored}) => quarters === member.quarters && mirrored === member.mirrored)?.outline ?? [], x, y);

function wrong({id, x, y}: HeldPiece, {outline, length, width}: Pose, {board, laid}: {readonly board: Board; readonly laid: readonly Laid[]}, {margin, gap, cuts}: Job): Problem | undefined {
  const near = 1e-9;
  const isOn = x >= margin - near && y >= margin - near && x + length <= board.length - margin + near && y + width <= board.width - margin + near;
  if (!isOn) return {code: 'held-off-board', args: {id, board: board.id}};
  const here = moved(outline, x, y);
  const close = laid.find((other) => {
    const there = outlineOf(other);
    return polygonsOverlap(here, there) || polygonDistance(here, there) < gap - near;
  });
  if (close) return {code: 'held-too-near', args: {id, other: close.members[0]?.shape.part.id ?? ''}};
  return cuts === 'straight' && !partingOf([...laid, {x, y, length, width}], gap) ? {code: 'held-not-straight', args: {id}} : undefined;
}

/** What cuts leave around the pieces, in this order or that; where they cannot all be parted by such cuts, one largest rectangle after another. */
function* freeAround(laid: readonly Laid[], board: Board, {margin, gap}: Job): Stepwise<readonly (readonly Box[])[]> {
  const inside: Box = {x: margin, y: margin, length: board.length - 2 * margin, width: board.width - 2 * margin};
  const parting = partingOf(laid, gap);
  if (parting) {
    return ([undefined, 'along', 'across'] as const).map((first) =>
      uncut(planOf(parting, laid, inside, gap, first)).filter(({cutout}) => cutout === undefined).map(({box}) => box));
  }
  const free: Box[] = [];
  for (;;) {
    const taken = [...laid, ...free].map((box) => ({...box, x: box.x - margin, y: box.y - margin}));
    const next = yield* largestLeftover(taken, {length: board.length, width: board.width, margin, gap});
    if (!next) return [free];
    free.push({...next, x: next.x + margin, y: next.y + margin});
  }
}
