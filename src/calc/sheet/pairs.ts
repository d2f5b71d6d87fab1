import type {Polygon} from '../geometry/polygon/index.js';
import {memberAt, type Block} from './block.js';
import {fits, type Pose, type Shape, type Usable} from './shape.js';
import {slideClear} from './slide.js';
import {pace, type Stepwise} from '../stepwise.js';

/** Two pieces nested into one block, and the share of board that saves over placing each by its own bounds. */
export interface Pair {
  readonly first: Shape;
  readonly second: Shape;
  readonly block: Block;
  readonly saving: number;
}

/** Below this a pair saves too little for the freedom that it takes. */
const leastSaving = 0.05;

/** Pairs of corners compared between two stops. */
const stride = 10_000;

/** A bound on corners compared, so that many odd outlines cannot make a layout slow. */
const mostCorners = 200;

/**
 * Every two pieces that nest to advantage, the best first: tapered panels laid head to tail, for one, or a small piece in
 * the notch of a large one. A part nests with another copy of itself when it has one.
 */
export function* nestingPairs(shapes: readonly Shape[], sheet: Usable, gap: number): Stepwise<Pair[]> {
  const known: Shape[] = [];
  let corners = 0;
  for (const shape of shapes) {
    corners += shape.poses[0].outline.length;
    if (corners > mostCorners) break;
    known.push(shape);
  }
  const due = pace(stride);
  const pairs: Pair[] = [];
  for (const [i, first] of known.entries()) {
    for (const second of known.slice(i)) {
      const pair = bestPair(first, second, sheet, gap);
      if (pair) pairs.push(pair);
      if (due(first.poses.length * second.poses.length * first.poses[0].outline.length * second.poses[0].outline.length)) yield;
    }
  }
  return pairs.sort((a, b) => b.saving - a.saving);
}

function bestPair(first: Shape, second: Shape, sheet: Usable, gap: number): Pair | undefined {
  const copies = first === second ? 2 : 1;
  if (first.part.count < copies || second.part.count < copies) return undefined;
  const mayTurn = first.part.mayTurn && second.part.mayTurn;
  // where the block may be turned as a whole, or the second piece can follow, the first need not be turned
  const firstPoses = second.part.mayTurn ? first.poses.filter(({quarters}) => quarters === first.poses[0].quarters) : first.poses;
  const apart = padded(first.poses[0], gap) + padded(second.poses[0], gap);
  // the block can be no smaller than what is in it
  if (1 - (first.area + second.area) / apart < leastSaving) return undefined;
  let best: Pair | undefined;
  for (const a of firstPoses) {
    for (const b of second.poses) {
      for (const {x, y} of nestings(a, b, gap)) {
        const left = Math.min(0, x), low = Math.min(0, y);
        const length = Math.max(a.length, x + b.length) - left, width = Math.max(a.width, y + b.width) - low;
        if (!fits(length, width, sheet) && !(mayTurn && fits(width, length, sheet))) continue;
        const saving = 1 - padded({length, width}, gap) / apart;
        if (saving < leastSaving || best && saving <= best.saving + 1e-9) continue;
        const members = [memberAt(first, a, -left, -low), memberAt(second, b, x - left, y - low)];
        best = {first, second, saving, block: {members, length, width, mayTurn}};
      }
    }
  }
  return best;
}

const padded = ({length, width}: {readonly length: number; readonly width: number}, gap: number): number =>
  (length + gap) * (width + gap);

/** Places for `b` beside `a`: pushed up against it from each of the four sides, flush with either end. */
function nestings(a: Pose, b: Pose, gap: number): {x: number; y: number}[] {
  const shifts = new Set([0, a.width - b.width]), lifts = new Set([0, a.length - b.length]);
  const fromSides = [...shifts].flatMap((y) => {
    const up = lifted(b.outline, y);
    return [{x: slideClear(a.outline, up, gap), y}, {x: -slideClear(up, a.outline, gap), y}];
  });
  const fromEnds = [...lifts].flatMap((x) => {
    const upright = swapped(a.outline), up = lifted(swapped(b.outline), x);
    return [{x, y: slideClear(upright, up, gap)}, {x, y: -slideClear(up, upright, gap)}];
  });
  return [...fromSides, ...fromEnds].filter(({x, y}) => Number.isFinite(x) && Number.isFinite(y));
}

const lifted = (outline: Polygon, by: number): Polygon => outline.map(({x, y}) => ({x, y: y + by}));
const swapped = (outline: Polygon): Polygon => outline.map(({x, y}) => ({x: y, y: x}));
