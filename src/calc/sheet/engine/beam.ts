import {at, Frontier} from './frontier.js';
import type {Random} from './random.js';
import {areaOf, areaOfAll, sum, type Effort, type Filling, type Kind, type Room, type Spot, type Task} from './task.js';

/** What a mark weighs besides waste: to have covered little, and each step of the skyline, in mean pieces. Found by trial. */
const covering = 0.03;
const stepCost = {free: 0.02, straight: 0.05};

/** How often the lowest place may be filled up on trial, to make a longer one. */
const raises = {free: 1, straight: 2};

/** Ways to place a piece looked at between two stops, and layouts made. */
const stride = 5000, pause = 500;

/** More marks than this are not sorted at a time. */
const mostSorted = 20_000;

/** The broadest search that stays within some 30 MB. */
export const broadest = (task: Task): number =>
  Math.max(1, Math.floor(Math.min(2e5 / task.kinds.length, 2e5 / mostSegments(task))));

/** A segment is a piece long or beside one. */
function mostSegments({kinds, counts, rooms}: Task): number {
  const shortest = Math.min(...kinds.map(({length, width, mayTurn}) => (mayTurn ? Math.min(length, width) : length)));
  const longest = Math.max(...rooms.map(({length}) => length));
  return 2 + Math.min(sum(counts), 2 * Math.floor(longest / shortest));
}

/** The same with x and y exchanged. */
function exchanged(task: Task): Task {
  const exchange = <T extends Room>(each: T): T => ({...each, length: each.width, width: each.length});
  return {...task, kinds: task.kinds.map((kind): Kind => exchange(kind)), rooms: task.rooms.map(exchange)};
}

/**
 * Fills rooms with rectangles, all of them but for an area that may be left over; undefined when that was not found.
 *
 * A beam search over skylines: of all layouts with n pieces the best `breadth` are kept, and to each of them every piece
 * that is left is tried in the lowest place, against the higher wall. Layouts are marked by the share of board wasted so far
 * and by how ragged their skyline is, for the mean size of the pieces placed, so that small pieces are kept for later
 * (that guide: L. Libralesso, F. Fontan, An anytime tree search algorithm for the 2018 ROADEF/EURO challenge glass cutting
 * problem, 2021; skyline: L. Wei et al., A skyline heuristic for the 2D rectangular packing and strip packing problems, 2011;
 * skylines for straight cuts: own).
 */
export function* beam(task: Task, straight: boolean, effort: Effort, random: Random, bench: Bench): Filling {
  const search = new Beam(effort.along ? exchanged(task) : task, straight, effort, random, bench);
  if (!search.possible) return undefined;
  let looked = 0;
  do {
    // the layouts raised on trial join the end of the row while it is gone through
    for (let k = 0; k < search.now.count; k++) {
      search.expand(k);
      looked += search.ways.length + 4;
      if (looked < stride) continue;
      looked = 0;
      yield;
    }
  } while (yield* search.choose());
  const spots = search.spots();
  return effort.along ? spots?.map(({x, y, ...spot}) => ({...spot, x: y, y: x})) : spots;
}

/** Room to work in, used again by one search after another. */
export class Bench {
  readonly now = new Frontier();
  readonly next = new Frontier();
  /** What is on offer: how good it would be, and a number for layout, way and side. */
  marks = new Float64Array(1024);
  offers = new Int32Array(1024);

  /** Twice the room for offers. */
  grow(): void {
    const {marks, offers} = this;
    this.marks = new Float64Array(2 * marks.length);
    this.offers = new Int32Array(2 * marks.length);
    this.marks.set(marks);
    this.offers.set(offers);
  }
}

interface Way {
  readonly kind: number;
  readonly length: number;
  readonly width: number;
  readonly pose: number;
}

class Beam {
  now: Frontier;
  readonly possible: boolean;
  readonly ways: readonly Way[];
  readonly #task: Task;
  readonly #straight: boolean;
  readonly #effort: Effort;
  readonly #random: Random;
  readonly #stepCost: number;
  readonly #raises: number;
  /** Area of the rooms up to each, and the least a room adds to that. */
  readonly #board: number[] = [0];
  readonly #mayWaste: number;
  readonly #area: number;
  #next: Frontier;
  #level = 0;
  readonly #bench: Bench;
  #offered = 0;
  /** Every piece ever placed: the one placed before it, and five numbers for where and how. */
  readonly #parents: number[] = [];
  readonly #trace: number[] = [];
  readonly #pieces: number;
  /** Above every skyline. */
  readonly #height: number;
  /** The best layout that can take no more. */
  #best: number | undefined;
  #mostPlaced: number;
  #leastTaken = Infinity;

  constructor(task: Task, straight: boolean, effort: Effort, random: Random, bench: Bench) {
    const {kinds, counts, rooms} = task;
    [this.#task, this.#straight, this.#effort, this.#random, this.#bench] = [task, straight, effort, random, bench];
    const mode = straight ? 'straight' : 'free';
    this.ways = kinds.flatMap(({length, width, mayTurn}, kind) => counts[kind] === 0 ? [] : [
      {kind, length, width, pose: 0},
      ...mayTurn && length !== width ? [{kind, length: width, width: length, pose: 1}] : [],
    ]);
    for (const room of rooms) this.#board.push((this.#board.at(-1) ?? 0) + areaOf(room));
    this.#pieces = sum(counts);
    this.#height = 2 * Math.max(...rooms.map(({width}) => width));
    this.#area = areaOfAll(kinds, counts);
    this.#mayWaste = (this.#board.at(-1) ?? 0) - this.#area + task.mayLeave;
    this.#mostPlaced = this.#area - task.mayLeave * (1 + 1e-12);
    this.possible = this.#mayWaste >= 0 && this.#pieces > 0 && rooms.length > 0;
    this.#stepCost = stepCost[mode] * this.#area / this.#pieces;
    this.#raises = raises[mode];
    [this.now, this.#next] = [bench.now, bench.next];
    const size = effort.breadth * (1 + this.#raises), most = mostSegments(task);
    if (this.possible) for (const row of [bench.now, bench.next]) row.reset(size, most, counts);
  }

  /** Puts every piece that layout k can take next on offer. */
  expand(k: number): void {
    const {now} = this;
    const {rooms} = this.#task;
    if (this.#level === this.#pieces) {
      this.#note(k);
      return;
    }
    for (;;) {
      const s = now.findLowest(k), i = k * now.most + s;
      const room = rooms[at(now.room, k)];
      if (!room) return;
      const last = s + 1 === at(now.segments, k);
      const gap = (last ? room.length : at(now.x, i + 1)) - at(now.x, i), y = at(now.top, i);
      const before = at(now.before, k);
      const left = (s > 0 ? at(now.top, i - 1) : room.width) - y, right = (last ? room.width : at(now.top, i + 1)) - y;
      if (this.#offer(k, s, gap, room.width - y, left, right)) {
        this.#raise(k, s, gap);
        return;
      }
      // what the filling up was for did not fit
      if (before > 0 && gap > before) return;
      if (at(now.segments, k) > 1) this.#fill(k, s, gap);
      else this.#nextRoom(k);
      if (at(now.waste, k) > this.#mayWaste) return;
    }
  }

  /** Offers all pieces that fit the lowest place of layout k; whether there was any. */
  #offer(k: number, s: number, gap: number, height: number, left: number, right: number): boolean {
    const {now, ways} = this;
    const from = k * now.kinds, before = at(now.before, k), waste = at(now.waste, k), placed = at(now.placed, k);
    const segments = at(now.segments, k), joinsLeft = now.joins(k, s), joinsRight = now.joins(k, s + 1);
    let shortest = Infinity;
    for (const {kind, length} of ways) if (length < shortest && at(now.left, from + kind) > 0) shortest = length;
    let any = false;
    for (let w = 0; w < ways.length; w++) {
      const {kind, length, width} = ways[w] as Way;
      if (length > gap || length <= before || width > height || at(now.left, from + kind) === 0) continue;
      const beside = gap - length;
      let lost = waste, steps = segments, atRight = 0;
      if (beside === 0) {
        if (joinsLeft && width === left) steps--;
        if (joinsRight && width === right) steps--;
      } else {
        const flushLeft = width === left, flushRight = width === right;
        atRight = Number(flushLeft === flushRight ? left < right : flushRight);
        // a column of its own does not join its neighbours where cuts are straight
        if (this.#straight || !(atRight ? flushRight && joinsRight : flushLeft && joinsLeft)) steps++;
        if (beside < shortest) lost += beside * Math.min(width, atRight ? left : right);
      }
      if (lost > this.#mayWaste) continue;
      any = true;
      const area = placed + length * width, covered = area + lost;
      const mark = (lost + covering * covered + this.#stepCost * steps) / covered / area;
      this.#put(this.#effort.noise ? mark * (1 + this.#effort.noise * this.#random()) : mark, 2 * (k * ways.length + w) + atRight);
    }
    return any;
  }

  #put(mark: number, offer: number): void {
    const bench = this.#bench;
    if (this.#offered === bench.marks.length) bench.grow();
    bench.marks[this.#offered] = mark;
    bench.offers[this.#offered++] = offer;
  }

  /** Layout k once more, with its lowest place filled up so that longer pieces may fit. */
  #raise(k: number, s: number, gap: number): void {
    const {now} = this;
    const raised = at(now.raised, k);
    if (raised === this.#raises || at(now.segments, k) === 1) return;
    const copy = now.count;
    now.count++;
    this.#copy(k, now, copy);
    now.segments[copy] = copySegments(now, k, 0, at(now.segments, k), now, copy, 0);
    this.#fill(copy, s, gap);
    now.raised[copy] = raised + 1;
    now.before[copy] = gap;
    if (at(now.waste, copy) > this.#mayWaste) now.count--;
  }

  /** Gives up the board above the lowest place as far as it takes to join it to what is beside it. */
  #fill(k: number, s: number, gap: number): void {
    const {now} = this;
    const i = k * now.most + s, to = now.nextHeight(k, s);
    now.waste[k] = at(now.waste, k) + gap * (to - at(now.top, i));
    now.top[i] = to;
    now.join(k);
  }

  #nextRoom(k: number): void {
    const {now} = this;
    const room = now.room[k] = at(now.room, k) + 1, placed = at(now.placed, k);
    const board = this.#board[room];
    now.open(k);
    if (board !== undefined) now.waste[k] = board - placed;
    if (room === this.#task.rooms.length) this.#note(k);
  }

  /** Keeps the best of what was offered as the next row; false when nothing was. */
  *choose(): Generator<undefined, boolean> {
    const {now, ways} = this, next = this.#next;
    const {breadth} = this.#effort;
    const offered = this.#offered;
    const worst = offered > breadth ? this.#markOf(breadth) : Infinity;
    const seen = new Set<number>();
    let made = 0;
    next.count = 0;
    for (let n = 0; n < offered && next.count < breadth; n++) {
      if (at(this.#bench.marks, n) > worst) continue;
      if (++made % pause === 0) yield;
      const offer = at(this.#bench.offers, n), pair = offer >> 1, k = Math.floor(pair / ways.length);
      this.#place(k, ways[pair % ways.length] as Way, offer & 1);
      const look = lookOf(next, next.count);
      if (seen.has(look)) continue;
      seen.add(look);
      next.trace[next.count++] = this.#parents.length - 1;
    }
    this.#offered = 0;
    this.#level++;
    [this.now, this.#next] = [next, now];
    return next.count > 0;
  }

  /** The mark that about so many offers do not exceed; found from a share of them where there are very many. */
  #markOf(count: number): number {
    const share = Math.ceil(this.#offered / mostSorted);
    const some = new Float64Array(Math.ceil(this.#offered / share));
    for (let i = 0; i < some.length; i++) some[i] = at(this.#bench.marks, i * share);
    return at(some.sort(), Math.ceil(count / share) - 1);
  }

  /** Makes the layout that follows from k by placing a piece, at the end of the next row. */
  #place(k: number, {kind, length, width, pose}: Way, atRight: number): void {
    const {now} = this, next = this.#next, j = next.count;
    this.#copy(k, next, j);
    const segments = at(now.segments, k), s = at(now.lowest, k), i = k * now.most + s;
    const room = at(now.room, k);
    const start = at(now.x, i), y = at(now.top, i);
    const end = s + 1 < segments ? at(now.x, i + 1) : (this.#task.rooms[room]?.length ?? 0);
    const x = atRight ? end - length : start;
    let to = copySegments(now, k, 0, s + 1, next, j, 0);
    const first = j * next.most + to - 1;
    if (!atRight) next.top[first] = y + width;
    if (length < end - start) {
      next.x[first + 1] = atRight ? x : x + length;
      next.top[first + 1] = atRight ? y + width : y;
      next.base[first + 1] = this.#straight ? y : 0;
      to++;
    }
    next.segments[j] = copySegments(now, k, s + 1, segments, next, j, to);
    next.join(j);
    const at0 = j * next.kinds + kind;
    next.left[at0] = at(next.left, at0) - 1;
    next.placed[j] = at(now.placed, k) + length * width;
    this.#parents.push(at(now.trace, k));
    this.#trace.push(kind, room, x, y, pose);
  }

  /** Copies all but the skyline. */
  #copy(k: number, to: Frontier, j: number): void {
    const {now} = this;
    for (let i = 0; i < now.kinds; i++) to.left[j * to.kinds + i] = at(now.left, k * now.kinds + i);
    to.room[j] = at(now.room, k);
    to.waste[j] = at(now.waste, k);
    to.placed[j] = at(now.placed, k);
    to.trace[j] = at(now.trace, k);
    to.raised[j] = to.before[j] = 0;
  }

  /** Notes a layout that can take no more: the one with the most on it counts, then the one that takes the least board. */
  #note(k: number): void {
    const {now} = this;
    const placed = at(now.placed, k);
    const taken = at(now.room, k) + highest(now, k) / this.#height;
    if (placed < this.#mostPlaced || placed === this.#mostPlaced && taken >= this.#leastTaken) return;
    [this.#mostPlaced, this.#leastTaken, this.#best] = [placed, taken, at(now.trace, k)];
  }

  /** The places of the pieces on the best layout found. */
  spots(): readonly Spot[] | undefined {
    if (this.#best === undefined) return undefined;
    const spots: Spot[] = [];
    for (let i = this.#best; i >= 0; i = this.#parents[i] ?? -1) {
      const [kind = 0, room = 0, x = 0, y = 0, pose = 0] = this.#trace.slice(5 * i, 5 * i + 5);
      spots.push({kind, room, x, y, pose});
    }
    return spots.reverse();
  }
}

function highest({segments, most, top}: Frontier, k: number): number {
  let highest = 0;
  for (let i = k * most; i < k * most + at(segments, k); i++) highest = Math.max(highest, at(top, i));
  return highest;
}

/** Copies a run of segments behind what layout j of another row has; how many it has then. */
function copySegments(from: Frontier, k: number, first: number, end: number, to: Frontier, j: number, behind: number): number {
  let t = j * to.most + behind;
  for (let i = k * from.most + first; i < k * from.most + end; i++, t++) {
    to.x[t] = at(from.x, i);
    to.top[t] = at(from.top, i);
    to.base[t] = at(from.base, i);
  }
  return behind + end - first;
}

/** A number that two layouts have in common when the same can still become of both, and hardly ever otherwise. */
function lookOf({segments, most, kinds, left, room, x, top, base}: Frontier, k: number): number {
  let look = at(room, k);
  for (let i = k * most; i < k * most + at(segments, k); i++) {
    look = Math.imul(look, 31) + at(x, i) * 7919 + at(top, i) * 104729 + at(base, i) * 1299709 | 0;
  }
  for (let i = k * kinds; i < (k + 1) * kinds; i++) look = Math.imul(look, 33) + at(left, i) | 0;
  return look;
}
