import {bounds, moved} from '../../calc/geometry/polygon/index.js';
import type {HeldPiece} from '../../calc/sheet/engine/job.js';
import type {Placed, Turn} from '../../calc/sheet/layout.js';
import {linesOnSheet, type CutPiece} from '../../calc/sheet/plans.js';
import {lying} from '../../calc/sheet/shape.js';
import {toStep, within} from '../base/dragged.js';

/** How a piece lies: the lower left corner of its bounds, m, and its turn. */
export interface Pose {
  readonly x: number;
  readonly y: number;
  readonly turn: Turn;
}

/** What a piece may move about on, m. */
export interface Table {
  readonly length: number;
  readonly width: number;
  readonly margin: number;
}

const outlineAt = ({part, placed: {mirrored}}: CutPiece, {x, y, turn}: Pose) => moved(lying(part.outline, turn / 90, mirrored), x, y);

/** The piece as it would lie. */
export function movedPiece(piece: CutPiece, pose: Pose): CutPiece {
  const placed: Placed = {...piece.placed, ...pose, outline: outlineAt(piece, pose)};
  return {...piece, placed, lines: linesOnSheet(piece.part, placed)};
}

/** As near as possible to where it was wanted, on a mark of the ruler or at the very edge of the sheet. */
export function keptOn(piece: CutPiece, pose: Pose, {length, width, margin}: Table, step: number): Pose {
  const size = bounds(outlineAt(piece, pose));
  const on = (at: number, side: number, own: number): number => within(toStep(at, step), margin, Math.max(margin, side - margin - own));
  return {...pose, x: on(pose.x, length, size.length), y: on(pose.y, width, size.width)};
}

/** Turned about its middle. */
export function turnedPose(piece: CutPiece, pose: Pose, by: 90 | 180 = 90): Pose {
  const before = bounds(outlineAt(piece, pose));
  const turn = ((pose.turn + by) % 360) as Turn;
  const after = bounds(outlineAt(piece, {...pose, turn}));
  return {turn, x: before.x + (before.length - after.length) / 2, y: before.y + (before.width - after.width) / 2};
}

/** Whether a piece lies where somebody holds it. */
export const isHeldAs = ({id, x, y, turn, mirrored}: Placed, held: HeldPiece): boolean =>
  id === held.id && turn === held.turn && mirrored === held.mirrored && Math.abs(x - held.x) < 1e-9 && Math.abs(y - held.y) < 1e-9;
