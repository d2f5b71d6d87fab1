import {worthKeeping} from '../leftover.js';
import {insideOf} from './boards.js';
import type {Field} from './field.js';
import {heldInOtherWays, type HeldSheet} from './held.js';
import type {Board, Found, Job} from './job.js';
import {roomKeeping, roomsKept, sizeToKeep, withRoomKept, withRoomToKeep} from './keep-room.js';
import {leastSheets} from './least-sheets.js';
import {isRectangle, singles} from './nested.js';
import {outlines} from './outlines.js';
import {Packing, pursue, type Aim} from './packing.js';
import {randomFrom, type Random} from './random.js';
import {ready, type Ready} from './ready.js';
import {rectangles} from './rectangles.js';
import {cheaperRooms, firstRooms, heldRooms, roomOf, type BoardRoom} from './rooms.js';
import {leftoverSteps} from './sheet.js';
import {foundFrom, isBetter, rankOf} from './solution.js';
import {areaOf, areaOfAll, sum, type Room, type Spot} from './task.js';

/** So many rounds without anything better, each longer than the one before, and the search ends. */
const patientRounds = 10;

/** So many sizes of what might be left over are tried at a time. */
const cornersTried = 8;

/** With more pieces there is a stop before they are laid out. */
const many = 300;

/** A room that holds something. */
interface Used {
  readonly room: BoardRoom;
  readonly spots: readonly Spot[];
  readonly area: number;
}

/** The one that holds least, but for rolls. */
const emptiestOf = (rooms: readonly Used[]): Used | undefined =>
  rooms.filter(({room: {board}}) => Number.isFinite(board.length)).sort((a, b) => a.area - b.area)[0];

/** A packing that was finished, in the field it belongs to. */
interface Finished {
  readonly field: Field;
  readonly packing: Packing;
  readonly rank: readonly number[];
}

/**
 * A search for the best layout of a job, in small steps, for as long as whoever runs it likes.
 *
 * Aims, one after another: everything placed, the fewest sheets, the least board, the largest piece left over, the fewest
 * cuts and settings of the ruler. The same job with the same seed goes through the same layouts, on any clock.
 */
export class SheetSearch {
  #ready!: Ready;
  readonly #random: Random;
  readonly #run: Generator<undefined, void>;
  readonly #now: () => number;
  #areas: ReadonlyMap<string, number> = new Map();
  /** The best of each field, and the best of all. */
  readonly #bests = new Map<Field, Finished>();
  #best: Finished | undefined;
  #found: Found | undefined;
  /** Half-done work, by what it is for. */
  readonly #attempts = new Map<string, Packing>();
  #least = 0;
  /** The ways to see what is free round held pieces. */
  #ways: readonly (readonly HeldSheet[])[] = [];
  #done = false;
  #rounds = 0;

  /** `now` is the clock, in ms. */
  constructor(job: Job, {seed = 1, now}: {readonly seed?: number; readonly now: () => number}) {
    this.#random = randomFrom(seed);
    this.#now = now;
    this.#run = this.#search(job);
  }

  /** The best layout so far; undefined before the first. A better one is another object. */
  get found(): Found | undefined { return this.#found; }

  /** Whether it has given up looking for anything better. That nothing better exists is not said. */
  get done(): boolean { return this.#done; }

  /** How often it has been through all it tries, each time more patiently. */
  get rounds(): number { return this.#rounds; }

  /** The least that it does at a time. */
  step(): void { this.#done ||= this.#run.next().done === true; }

  /** Works for about so many ms; whether there is more to do. */
  work(ms: number): boolean {
    const end = this.#now() + ms;
    do this.step(); while (!this.#done && this.#now() < end);
    return !this.#done;
  }

  *#search(job: Job): Generator<undefined, void> {
    this.#ready = yield* ready(job);
    this.#areas = new Map(this.#ready.shapes.map(({part, area}) => [part.id, area]));
    yield;
    this.#least = yield* leastSheets(this.#ready);
    yield;
    if (this.#ready.loose.length > 0 && this.#ready.boards.length > 0) yield* this.#beginRoundHeld();
    else this.#found = yield* foundFrom([], this.#ready.loose, this.#least, this.#ready);
    for (let patience = 1e4, idle = 0; this.#best && idle < patientRounds; patience *= 1.6, idle++) {
      const before = this.#best;
      while (yield* this.#spareBoard(patience));
      yield* this.#keepMore(patience / 3);
      yield* this.#keepMoreRoundHeld(patience / 3);
      yield* this.#keepCorner(patience / 3);
      yield* this.#simplify(patience / 6);
      if (this.#best !== before) idle = 0;
      this.#rounds++;
    }
  }

  /** Begins with each way to see what is free round held pieces, and goes on with the one that served best. */
  *#beginRoundHeld(): Generator<undefined, void> {
    const given = this.#ready;
    let kept = given;
    this.#ways = heldInOtherWays(given.held);
    for (const held of this.#ways) {
      const best = this.#best, fields = [...this.#bests.keys()];
      this.#ready = {...given, held};
      yield* this.#begin();
      const served = this.#best !== best;
      if (served) kept = this.#ready;
      const left = served ? fields : [...this.#bests.keys()].filter((field) => !fields.includes(field));
      for (const field of left) this.#bests.delete(field);
    }
    this.#ready = kept;
  }

  /** First layouts: each way to look at the parts, each way to begin, filled along and across, or sheet after sheet alike. */
  *#begin(): Generator<undefined, void> {
    for (const field of fieldsOf(this.#ready, this.#random)) {
      for (const rooms of firstRooms(this.#ready)) {
        for (const along of [true, false]) {
          const packing = Packing.empty(field.filler, rooms, field.counts);
          yield* packing.begin(along);
          yield* this.#consider(field, packing);
          yield;
        }
        const alike = Packing.empty(field.filler, rooms, field.counts);
        yield* alike.repeat();
        yield* this.#consider(field, alike);
      }
    }
  }

  /** Looks for a layout on cheaper boards, or with more on all boards where they run out; whether it found one. */
  *#spareBoard(patience: number): Generator<undefined, boolean> {
    const before = this.#best;
    for (const {field, packing} of this.#bests.values()) {
      const whole = this.#best?.rank[0] === 0;
      const needed = areaOfAll(field.filler.kinds, field.counts);
      const goals = whole ? cheaperRooms(this.#roomsUsed(), this.#ready, this.#least, needed) : firstRooms(this.#ready);
      for (const goal of goals.slice(0, 3)) {
        const roll = goal.some(({board}) => !Number.isFinite(board.length));
        yield* this.#attempt(field, packing, goal, patience / this.#bests.size, roll ? {whole, along: true} : {whole});
        if (this.#best !== before) return true;
      }
    }
    return false;
  }

  /** Looks for a layout that leaves a larger piece over, to the right or above, on the emptiest sheet. */
  *#keepMore(patience: number): Generator<undefined, void> {
    for (const field of this.#bests.keys()) {
      for (const along of [true, false]) {
        for (let before; before !== this.#best;) {
          before = this.#best;
          const goal = this.#roomsKeepingMore(along);
          const from = this.#bests.get(field);
          if (goal && from) yield* this.#attempt(field, from.packing, goal, patience / this.#bests.size, {whole: true, along});
        }
      }
    }
  }

  /** The same where all lies on sheets with held pieces: each rectangle that is free round them made smaller in turn, in each way to see what is free. */
  *#keepMoreRoundHeld(patience: number): Generator<undefined, void> {
    if (this.#best?.rank[0] !== 0 || this.#ready.held.length === 0 || this.#loose.length > 0) return;
    for (const held of this.#ways) {
      const rooms = heldRooms({...this.#ready, held});
      for (const [i, room] of rooms.entries()) {
        for (const along of [true, false]) {
          for (let before; before !== this.#best;) {
            before = this.#best;
            const less = roomKeeping(this.#areaWanted(room.board), room, along, this.#ready);
            const goal = less && rooms.map((each, k) => (k === i ? less : each));
            const share = patience / (2 * rooms.length * this.#ways.length * this.#bests.size);
            for (const [field, {packing}] of goal ? this.#bests : []) yield* this.#attempt(field, packing, goal ?? [], share, {whole: true});
            if (before !== this.#best) this.#ready = {...this.#ready, held};
          }
        }
      }
    }
  }

  /** Looks for a layout that leaves a larger piece over in a corner of a sheet. */
  *#keepCorner(patience: number): Generator<undefined, void> {
    for (const field of [...this.#bests.keys()].filter(({upright}) => upright)) {
      for (let n = 0; n < cornersTried; n++) {
        const from = this.#bests.get(field);
        const size = this.#cornerToKeep();
        if (!from || !size) continue;
        const packing = withRoomToKeep(from.packing.inRooms(this.#roomsUsed()), size);
        const complete = yield* pursue(packing, this.#random, patience / cornersTried / this.#bests.size, {whole: true});
        if (complete) yield* this.#consider(field, packing);
      }
    }
  }

  /** The size of a piece that is larger, by a step, than what is left over of the best layout. */
  #cornerToKeep(): Room | undefined {
    const board = this.#best?.rank[0] === 0 ? emptiestOf(this.#loose)?.room.board : undefined;
    return board && sizeToKeep(this.#areaWanted(board), board, this.#ready, this.#random);
  }

  /** The rooms of the best layout but for those round held pieces. */
  get #loose(): readonly Used[] {
    return this.#best ? this.#used(this.#best.packing).filter(({room: {sheet}}) => sheet === undefined) : [];
  }

  /** The area of a piece left over that would be better by a step. */
  #areaWanted({length, width}: Board): number {
    return (1 - (this.#best?.rank[3] ?? 0)) / leftoverSteps * length * width;
  }

  /** The rooms that hold something, each as large as its board again; of a roll, as much as is used. */
  #used({rooms, spots, filler}: Packing): readonly Used[] {
    return rooms.map((room, i) => {
      const inIt = spots[i] ?? [];
      const whole = room.sheet === undefined ? roomOf(room.board, this.#ready) : room;
      const length = Number.isFinite(room.board.length) ? whole.length : Math.max(...inIt.map((spot) => spot.x + filler.size(spot).length));
      return {room: {...whole, length}, spots: inIt, area: sum(inIt.map(({kind}) => filler.kinds[kind]?.area ?? 0))};
    });
  }

  #roomsUsed(): readonly BoardRoom[] {
    return [...heldRooms(this.#ready), ...this.#loose.map(({room}) => room)];
  }

  /** The rooms of the best layout, the emptiest made smaller by the next larger step of what is left over. */
  #roomsKeepingMore(along: boolean): readonly BoardRoom[] | undefined {
    const loose = this.#loose, emptiest = emptiestOf(loose);
    if (!this.#best || this.#best.rank[0] !== 0 || !emptiest) return undefined;
    const last = emptiest.room;
    const {job, grid} = this.#ready;
    const {field: {filler, counts}} = this.#best;
    const inside = insideOf(last.board, job);
    const strip = Math.max(worthKeeping, this.#areaWanted(last.board) / (along ? inside.width : inside.length));
    const room = along ? {...last, length: grid.of(inside.length - strip)} : {...last, width: grid.of(inside.width - strip)};
    const rooms = [...heldRooms(this.#ready), ...loose.map((each) => (each === emptiest ? room : each.room))];
    const possible = room.length > 0 && room.width > 0 && sum(rooms.map(areaOf)) >= areaOfAll(filler.kinds, counts);
    return possible ? rooms : undefined;
  }

  /** Fills single sheets anew with what is on them, all that are alike at once, in the hope of fewer cuts and settings. */
  *#simplify(patience: number): Generator<undefined, void> {
    for (let spent = 0; this.#best && spent < patience;) {
      const {field, packing} = this.#best;
      const some = Math.floor(packing.rooms.length * this.#random());
      const task = packing.contentsOf(some);
      spent += 20 * sum(field.counts) + 3 * sum(task.counts);
      const effort = {breadth: 1 + Math.floor(4 * this.#random()), noise: 0.5, along: this.#random() < 0.5};
      const spots = yield* field.filler.fill(task, effort);
      if (spots) yield* this.#consider(field, packing.withAlike(some, spots));
      yield;
    }
  }

  /** Works towards a packing in certain rooms, where it left off if it did so before. */
  *#attempt(field: Field, from: Packing, rooms: readonly BoardRoom[], patience: number, aim: Aim): Generator<undefined, void> {
    const key = [[...this.#bests.keys()].indexOf(field), aim.along, ...rooms.map(({board, sheet, x, y, length, width}) => [board.id, sheet, x, y, length, width])].join();
    const packing = this.#attempts.get(key) ?? from.inRooms(rooms);
    this.#attempts.set(key, packing);
    const complete = yield* pursue(packing, this.#random, patience, aim);
    if (complete || !aim.whole) yield* this.#consider(field, packing);
  }

  /** Keeps a packing if it is the best of its field, and shows it if it is the best of all. */
  *#consider(field: Field, whole: Packing): Generator<undefined, void> {
    const used = this.#used(whole.used), packing = withRoomKept(whole, field.filler).used;
    const {laid, left} = field.lay(used.map(({spots}) => spots));
    if (sum(field.counts) > many) yield;
    const kept = used.map(({spots}) => roomsKept(spots, whole.filler, field.filler.kinds.length, this.#ready));
    const found = yield* foundFrom(used.map(({room}, i) => ({room, laid: [...laid[i] ?? [], ...kept[i] ?? []]})), left, this.#least, this.#ready, this.#found);
    const rank = rankOf(found, this.#areas);
    if (isBetter(rank, this.#bests.get(field)?.rank)) this.#bests.set(field, {field, packing, rank});
    if (!isBetter(rank, this.#best?.rank)) return;
    this.#best = {field, packing, rank};
    this.#found = found;
    this.#attempts.clear();
  }
}

/** Every piece by itself; where some nest, those in pairs; and their very outlines, where those may be cut. */
function* fieldsOf(ready: Ready, random: Random): Generator<Field, void> {
  const {job, loose, pairs} = ready;
  yield rectangles(singles(loose), ready, random);
  if (pairs) yield rectangles(pairs, ready, random);
  if (job.cuts === 'free' && !loose.every(isRectangle)) yield outlines(ready, random);
}
