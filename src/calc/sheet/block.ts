import type {Pose, Shape} from './shape.js';

/** A piece within a block: how it lies and where the corner of its bounds is, from the block's corner. */
export interface Member {
  readonly shape: Shape;
  readonly quarters: number;
  readonly mirrored: boolean;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** What is placed as one rectangle: a single piece, or two that lie nested. */
export interface Block {
  readonly members: readonly Member[];
  readonly length: number;
  readonly width: number;
  readonly mayTurn: boolean;
}

/** A piece lying in one pose at a place. */
export const memberAt = (shape: Shape, {quarters, mirrored, length, width}: Pose, x: number, y: number): Member =>
  ({shape, quarters, mirrored, x, y, length, width});

/** A piece by itself, as given. */
export function single(shape: Shape): Block {
  const [pose] = shape.poses;
  const {length, width} = pose;
  return {members: [memberAt(shape, pose, 0, 0)], length, width, mayTurn: shape.part.mayTurn};
}

/** The pieces of a block after the whole of it has been turned a quarter counter-clockwise. */
export const membersTurned = ({members, width}: Block): Member[] =>
  members.map((member) => ({
    ...member,
    quarters: (member.quarters + 1) % 4,
    x: width - member.y - member.width,
    y: member.x,
    length: member.width,
    width: member.length,
  }));
