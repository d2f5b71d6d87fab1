import type {Random} from './random.js';
import type {BoardRoom} from './rooms.js';
import {areaOfAll, sum, type Effort, type Filling, type Kind, type Room, type Spot, type Task} from './task.js';

/** A way of filling rooms with things of certain kinds. */
export interface Filler {
  readonly kinds: readonly Kind[];
  fill(task: Task, effort: Effort): Filling;
  /** The largest breadth that makes sense for a task. */
  broadest(task: Task): number;
  /** How much room a piece takes as it lies. */
  size(spot: Spot): Room;
}

/** Rooms that ought to hold everything, what lies in them at present, and what does not yet. */
export class Packing {
  /** How broad the next search over all rooms is. */
  breadth = 1;

  constructor(
    readonly filler: Filler,
    readonly rooms: readonly BoardRoom[],
    readonly spots: (readonly Spot[])[],
    readonly left: number[],
  ) {}

  static empty(filler: Filler, rooms: readonly BoardRoom[], counts: readonly number[]): Packing {
    return new Packing(filler, rooms, rooms.map(() => []), [...counts]);
  }

  get leftArea(): number { return areaOfAll(this.filler.kinds, this.left); }

  /** The same in other rooms: each takes over what fits it of the fullest room of its board, all else is left. */
  inRooms(rooms: readonly BoardRoom[]): Packing {
    const area = (spots: readonly Spot[]): number => sum(spots.map(({kind}) => this.filler.kinds[kind]?.area ?? 0));
    const old = this.rooms.map((room, i) => ({room, spots: this.spots[i] ?? []})).sort((a, b) => area(b.spots) - area(a.spots));
    const next = Packing.empty(this.filler, rooms, this.left);
    next.breadth = this.breadth;
    rooms.forEach((room, i) => {
      const found = old.findIndex(({room: {board, sheet, x, y}}) =>
        board === room.board && sheet === room.sheet && (sheet === undefined || x === room.x && y === room.y));
      const [taken] = found < 0 ? [] : old.splice(found, 1);
      next.#keep(i, taken?.spots ?? []);
    });
    for (const {spots} of old) for (const {kind} of spots) next.#change(kind, 1);
    return next;
  }

  #keep(i: number, spots: readonly Spot[]): void {
    const {length, width} = this.rooms[i] ?? {length: 0, width: 0};
    const isIn = (spot: Spot): boolean => {
      const size = this.filler.size(spot);
      return spot.x + size.length <= length && spot.y + size.width <= width;
    };
    this.spots[i] = spots.filter(isIn);
    for (const spot of spots) if (!isIn(spot)) this.#change(spot.kind, 1);
  }

  #change(kind: number, by: number): void { this.left[kind] = (this.left[kind] ?? 0) + by; }

  /** The same without the rooms that hold nothing. */
  get used(): Packing {
    const isUsed = (_: unknown, i: number): boolean => (this.spots[i]?.length ?? 0) > 0;
    const used = new Packing(this.filler, this.rooms.filter(isUsed), this.spots.filter(isUsed), [...this.left]);
    used.breadth = this.breadth;
    return used;
  }

  /** Fills all rooms, one after another, as quickly as can be. */
  *begin(along: boolean): Generator<undefined, void> {
    const everywhere = this.rooms.map((_, i) => i);
    const task = this.taskOf(everywhere, this.leftArea);
    const spots = yield* this.filler.fill(task, {breadth: 1, noise: 0, along});
    if (spots) this.take(everywhere, task, spots);
  }

  /** Fills one room after another, each filling as often as there are pieces and rooms for it. */
  *repeat(): Generator<undefined, void> {
    for (let i = 0; i < this.rooms.length && this.left.some((count) => count > 0);) {
      const task = this.taskOf([i], this.leftArea);
      const spots = yield* this.filler.fill(task, {breadth: 5, noise: 0, along: true});
      if (!spots) { i++; continue; }
      this.take([i], task, spots);
      const takes = (kind: number): number => spots.filter((spot) => spot.kind === kind).length;
      const most = Math.min(...[...new Set(spots.map(({kind}) => kind))].map((kind) => Math.floor((this.left[kind] ?? 0) / takes(kind))));
      const first = i++;
      for (let n = 0; n < most && this.#areAlike(first, i); n++, i++) {
        this.spots[i] = this.spots[first] ?? [];
        for (const {kind} of spots) this.#change(kind, -1);
      }
    }
  }

  /** What is in one room, to be placed there anew. */
  contentsOf(i: number): Task {
    const room = this.rooms[i] ?? {length: 0, width: 0};
    const spots = this.spots[i] ?? [];
    const counts = this.left.map((_, kind) => spots.filter((spot) => spot.kind === kind).length);
    return {kinds: this.filler.kinds, counts, rooms: [room], mayLeave: 0};
  }

  /** Whether two rooms are of one size: what is free round held pieces is not, though of one board. */
  #areAlike(i: number, j: number): boolean {
    const [a, b] = [this.rooms[i], this.rooms[j]];
    return a?.board === b?.board && a?.length === b?.length && a?.width === b?.width;
  }

  /** The same with other places in one room, and in all of its size that are filled just like it. */
  withAlike(i: number, spots: readonly Spot[]): Packing {
    const look = (each: readonly Spot[] | undefined): string => JSON.stringify(each?.map(({kind, x, y, pose}) => [kind, x, y, pose]));
    const now = look(this.spots[i]);
    return new Packing(this.filler, this.rooms, this.spots.map((each, j) => (i === j || this.#areAlike(i, j) && look(each) === now ? spots : each)), this.left);
  }

  /** Some of the rooms with what is in them and all that is left, as a task of its own. */
  taskOf(chosen: readonly number[], mayLeave: number): Task {
    const counts = [...this.left];
    for (const i of chosen) for (const {kind} of this.spots[i] ?? []) counts[kind] = (counts[kind] ?? 0) + 1;
    return {kinds: this.filler.kinds, counts, rooms: chosen.map((i) => this.rooms[i] ?? {length: 0, width: 0}), mayLeave};
  }

  /** Takes over what was found for such a task. */
  take(chosen: readonly number[], {counts}: Task, spots: readonly Spot[]): void {
    counts.forEach((count, kind) => { this.left[kind] = count; });
    for (const {kind} of spots) this.#change(kind, -1);
    const inRooms = chosen.map((): Spot[] => []);
    for (const spot of spots) inRooms[spot.room]?.push(spot);
    chosen.forEach((i, room) => { this.spots[i] = inRooms[room] ?? []; });
  }
}

export interface Aim {
  /** Whether less than everything is of no use. */
  readonly whole: boolean;
  /** Whether rooms are filled along x; without it, now this way and now that. */
  readonly along?: boolean;
}

/**
 * Works at placing what is left: fills a few rooms anew, together with what is left, and keeps that if no more is left than
 * before. When it fills all rooms it looks further from time to time. True once everything is placed; gives up when it has
 * spent its patience, counted in pieces placed on trial.
 *
 * The aim is fixed and the search is for a layout that meets it: T. Gardeyn, T. Wauters, A goal-driven ruin and recreate
 * heuristic for the 2D variable-sized bin packing problem with guillotine constraints (2022).
 */
export function* pursue(packing: Packing, random: Random, patience: number, {whole, along}: Aim): Generator<undefined, boolean> {
  const {filler, rooms} = packing;
  for (let spent = 0; spent < patience && packing.left.some((count) => count > 0);) {
    const chosen = someOf(rooms.length, random);
    const all = chosen.length === rooms.length;
    const {leftArea} = packing;
    // all of it filled anew is worth its while only if that gets on
    const task = packing.taskOf(chosen, !all ? leftArea : whole ? 0 : leftArea * (1 - 1e-9));
    const most = filler.broadest(task);
    const breadth = all ? packing.breadth : 5 + Math.floor(15 * random());
    const noise = all && breadth < most ? 0 : 0.2;
    const spots = yield* filler.fill(task, {breadth: Math.min(breadth, most), noise, along: along ?? random() < 0.5});
    if (spots) packing.take(chosen, task, spots);
    else if (all) packing.breadth = Math.min(most, Math.ceil(1.5 * breadth));
    spent += sum(task.counts) * breadth;
    yield;
  }
  return packing.leftArea === 0;
}

/** Two to four rooms, or all. */
function someOf(rooms: number, random: Random): number[] {
  const chosen = new Set<number>();
  const most = Math.min(rooms, 2 + Math.floor(3 * random()));
  while (chosen.size < most) chosen.add(Math.floor(rooms * random()));
  return [...chosen];
}
