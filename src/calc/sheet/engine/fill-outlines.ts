import type {Polygon} from '../../geometry/polygon/index.js';
import {pace, type Stepwise} from '../../stepwise.js';
import {wayOut, type Forbidden} from './nofit.js';
import type {Random} from './random.js';
import {areaOfAll, type Effort, type Filling, type Room, type Spot, type Task} from './task.js';

/** A way a piece may lie, with the corner of its bounds at the origin, in convex pieces. */
export interface Lying {
  readonly pose: number;
  readonly length: number;
  readonly width: number;
  readonly pieces: readonly Polygon[];
}

/** The pieces of a job as outlines. */
export interface Outlines {
  /** The ways a kind may lie. */
  readonly lying: (kind: number) => readonly Lying[];
  /** Where the second must not be moved to beside the first. */
  readonly between: (a: Lying, b: Lying) => readonly Forbidden[];
  readonly gap: number;
  /** The best order so far of each lot of pieces, to go on from. */
  readonly orders: Map<string, readonly number[]>;
}

interface Put {
  readonly lying: Lying;
  readonly x: number;
  readonly y: number;
}

interface Obstacle {
  readonly region: Forbidden;
  readonly x: number;
  readonly y: number;
  /** Its bounds, less what still counts as touching. */
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** Obstacles looked at between two stops. */
const stride = 8000;

/** Orders are remembered for so many lots of pieces. */
const mostOrders = 500;

/** How near to each other lengths are the same, as a share of the largest. */
const near = 1e-11;

/**
 * Fills rooms from the left with one piece after another, each as far left as it goes, into notches too; large pieces first,
 * and then in orders that differ a little from the best so far.
 */
export function* fillInOrder(task: Task, effort: Effort, outlines: Outlines, random: Random): Filling {
  const area = (kind: number): number => task.kinds[kind]?.area ?? 0;
  const lot = task.counts.join();
  let order = (random() < 0.7 ? outlines.orders.get(lot) : undefined) ?? task.counts.flatMap((count, kind) => Array.from({length: count}, () => ({kind, mark: area(kind) * (1 + effort.noise * random())})))
    .sort((a, b) => b.mark - a.mark).map(({kind}) => kind);
  let best: readonly Spot[] | undefined;
  let least = task.mayLeave * (1 + 1e-12);
  let current = Infinity;
  for (let n = 0; n < effort.breadth && (n === 0 || current > 0); n++) {
    const tried = n === 0 ? order : exchanged(order, random);
    const spots = yield* placed(tried, task, effort.along, outlines);
    const counts = [...task.counts];
    for (const {kind} of spots) counts[kind] = (counts[kind] ?? 0) - 1;
    const left = areaOfAll(task.kinds, counts);
    if (left > current) continue;
    [current, order] = [left, tried];
    if (outlines.orders.size >= mostOrders) outlines.orders.clear();
    outlines.orders.set(lot, order);
    if (left <= least) [least, best] = [left, spots];
  }
  return best;
}

/** The same with one piece moved to another place. */
function exchanged(order: readonly number[], random: Random): number[] {
  const next = [...order];
  const [piece] = next.splice(Math.floor(random() * next.length), 1);
  if (piece !== undefined) next.splice(Math.floor(random() * (next.length + 1)), 0, piece);
  return next;
}

function* placed(order: readonly number[], {rooms}: Task, along: boolean, outlines: Outlines): Stepwise<readonly Spot[]> {
  const inRooms = rooms.map((): Put[] => []);
  const full = rooms.map(() => new Set<number>());
  const spots: Spot[] = [];
  for (const kind of order) {
    for (const [i, room] of rooms.entries()) {
      const there = inRooms[i];
      if (!there || full[i]?.has(kind)) continue;
      const put = yield* farthestLeft(outlines.lying(kind), along ? room : {length: room.width, width: room.length}, there, outlines);
      yield;
      if (!put) { full[i]?.add(kind); continue; }
      there.push(put);
      spots.push({kind, room: i, pose: put.lying.pose, x: along ? put.x : put.y, y: along ? put.y : put.x});
      break;
    }
  }
  return spots;
}

/** The place where a piece reaches least far to the right: on a level where some corner just passes another piece. */
function* farthestLeft(ways: readonly Lying[], room: Room, there: readonly Put[], {between, gap}: Outlines): Stepwise<Put | undefined> {
  const due = pace(stride);
  const touching = near * Math.max(room.length, room.width);
  let best: Put | undefined;
  let reach = room.length - gap + touching;
  for (const lying of ways) {
    const highest = room.width - gap - lying.width;
    if (highest < -touching || lying.length >= reach) continue;
    const out: Obstacle[] = [];
    for (const {lying: other, x, y} of there) {
      const regions = between(other, lying);
      for (const region of regions) {
        out.push({region, x, y, left: region.left + x + touching, right: region.right + x - touching, low: region.low + y + touching, high: region.high + y - touching});
      }
      // a region not seen before takes as long as many that are known
      if (due(50 * regions.length)) yield;
    }
    out.sort((a, b) => a.low - b.low);
    const levels = [0, highest, ...out.flatMap(({region, y}) => region.corners.map((corner) => corner.y + y))]
      .filter((level) => level >= 0 && level <= Math.max(0, highest)).sort((a, b) => a - b);
    let before = -1, first = 0;
    for (const y of levels) {
      if (y - before < touching) continue;
      before = y;
      // regions come and go in the order of their lower ends
      while ((out[first]?.high ?? Infinity) <= y) first++;
      let x = 0;
      for (let moved = true; moved && x + lying.length < reach;) {
        moved = false;
        if (due(out.length - first)) yield;
        for (let i = first; i < out.length; i++) {
          const {region, left, right, low, high, x: dx, y: dy} = out[i] as Obstacle;
          if (low >= y) break;
          if (high <= y || left >= x || right <= x) continue;
          const to = wayOut(region, x - dx, y - dy, touching);
          if (to === x - dx) continue;
          x = to + dx;
          moved = true;
        }
      }
      if (x + lying.length >= reach) continue;
      reach = x + lying.length;
      best = {lying, x, y};
    }
  }
  return best;
}
