import {single, type Block} from '../block.js';
import {nestingPairs, type Pair} from '../pairs.js';
import type {Shape, Usable} from '../shape.js';
import {pace, type Stepwise} from '../../stepwise.js';
import {lineBetween} from './divide.js';

/** So many blocks alike. */
export interface Blocks {
  readonly block: Block;
  readonly count: number;
}

/** Whether a part fills its bounds. */
export const isRectangle = ({area, poses: [{length, width}]}: Shape): boolean => area > length * width * (1 - 1e-9);

/** Every piece by itself. */
export const singles = (shapes: readonly Shape[]): readonly Blocks[] =>
  shapes.map((shape) => ({block: single(shape), count: shape.part.count}));

/** Pairs looked at between two stops. */
const stride = 100;

/** Outlines with more corners are not tried in pairs, which would take too long at a time. */
const mostCorners = 24;

/** The pieces with as many of them as possible nested in pairs, the best pairs first; undefined when none nest. */
export function* nested(shapes: readonly Shape[], room: Usable, gap: number, straight: boolean): Stepwise<readonly Blocks[] | undefined> {
  if (shapes.every(isRectangle)) return undefined;
  const plain = shapes.filter(({poses: [{outline}]}) => outline.length <= mostCorners);
  const due = pace(stride);
  const pairs: Pair[] = [];
  for (const pair of yield* nestingPairs(plain, room, gap)) {
    if (due(1)) yield;
    if (!straight || isDivisible(pair, gap)) pairs.push(pair);
  }
  if (pairs.length === 0) return undefined;
  const waiting = new Map(shapes.map((shape) => [shape, shape.part.count]));
  const waitingOf = (shape: Shape): number => waiting.get(shape) ?? 0;
  const blocks = pairs.map(({first, second, block}): Blocks => {
    const count = first === second ? Math.floor(waitingOf(first) / 2) : Math.min(waitingOf(first), waitingOf(second));
    for (const shape of [first, second]) waiting.set(shape, waitingOf(shape) - count);
    return {block, count};
  });
  return [...blocks, ...shapes.map((shape) => ({block: single(shape), count: waitingOf(shape)}))].filter(({count}) => count > 0);
}

/** Whether one straight cut parts the two. */
function isDivisible({block: {members}}: Pair, gap: number): boolean {
  const [a, b] = members.map(({shape, quarters, mirrored, x, y}) => {
    const pose = shape.poses.find((each) => each.quarters === quarters && each.mirrored === mirrored) ?? shape.poses[0];
    return pose.outline.map((point) => ({x: point.x + x, y: point.y + y}));
  });
  return a !== undefined && b !== undefined && lineBetween(a, b, gap) !== undefined;
}
