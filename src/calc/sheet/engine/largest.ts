import type {Stepwise} from '../../stepwise.js';
import type {Found, Job} from './job.js';
import {SheetSearch} from './search.js';
import {tooMuch} from './too-much.js';

/** A question of the kind "how many, or how long, at most?": a job for each number, of which none is easier than those before it. */
export interface Ladder {
  /** All that is to find room for a number, on the boards at hand; undefined where there is no such thing. */
  jobOf(n: number): Job | undefined;
  readonly least: number;
  /** No larger number is looked for. */
  readonly most: number;
  /** Where to begin, and whether everything is known to find room for that. */
  readonly from: number;
  readonly known: boolean;
}

/** A layout for a number. */
export interface Reached {
  readonly n: number;
  readonly found: Found;
}

/** So many rounds a number is tried for before it is left for a smaller one. */
const fewRounds = 2;

/**
 * A search for the largest number for which everything finds room, and for the best layout for that number, in small steps.
 *
 * From where it begins it goes up in growing strides, then halves what is left; after that it tries the next number ever more patiently,
 * turn about with bettering the layout for the one reached. What was tried in vain is not proved to be impossible; {@link bound} is proved.
 * The same ladder with the same seed goes through the same layouts, on any clock.
 */
export class LargestSearch {
  readonly #ladder: Ladder;
  readonly #options: {readonly seed: number; readonly now: () => number};
  readonly #run: Generator<undefined, void>;
  readonly #searches = new Map<number, SheetSearch>();
  #reached: number | undefined;
  /** Above it nothing is tried for now. */
  #over: number;
  #bound: number | undefined;
  #shown: Reached | undefined;
  #trying: number | undefined;
  #failed: number | undefined;
  #done = false;

  constructor(ladder: Ladder, {seed = 1, now}: {readonly seed?: number; readonly now: () => number}) {
    this.#ladder = ladder;
    this.#options = {seed, now};
    this.#over = ladder.most + 1;
    if (ladder.known) this.#reached = ladder.from;
    this.#run = this.#search();
  }

  /** The largest number for which everything is known to find room. */
  get reached(): number | undefined { return this.#reached; }

  /**
   * The best layout so far: for the largest number, and then the best for that. Where nothing is known to find room yet, the first layout
   * of as much as did; while a number is reached that needed no search, undefined.
   */
  get shown(): Reached | undefined { return this.#shown; }

  /** For no larger number can everything find room, which is proved; undefined while that is open, or where nothing is proved. */
  get bound(): number | undefined { return this.#bound; }

  /** The number that is being tried; none while the layout for the one reached is bettered. */
  get trying(): number | undefined { return this.#trying; }

  /** The least number above the one reached that was tried in vain. */
  get failed(): number | undefined { return this.#failed; }

  /** Whether it has given up. What it did not find may exist all the same. */
  get done(): boolean { return this.#done; }

  /** Works for about so many ms; whether there is more to do. */
  work(ms: number): boolean {
    const end = this.#options.now() + ms;
    do this.#done ||= this.#run.next().done === true; while (!this.#done && this.#options.now() < end);
    return !this.#done;
  }

  *#search(): Generator<undefined, void> {
    const {least, most} = this.#ladder;
    this.#bound = yield* this.#proved();
    const top = this.#bound ?? most;
    this.#over = top + 1;
    if (top < least) return;
    if (this.#reached === undefined) yield* this.#goDown(top);
    for (;;) {
      yield* this.#goUp();
      if (!(yield* this.#insist(top))) return;
      this.#over = top + 1;
    }
  }

  /** The largest number that is not proved to be too much. */
  *#proved(): Stepwise<number | undefined> {
    const {least, most, known, from} = this.#ladder;
    let open = known ? from : least - 1, over = most + 1;
    // what is too much for a number is too much for every larger one, so each proof holds for all above it
    for (let n = most; over - open > 1; n = Math.floor((open + over) / 2)) {
      const job = this.#ladder.jobOf(n);
      if (job && (yield* tooMuch(job))) over = n;
      else if (n === most) return undefined;
      else open = n;
      yield;
    }
    return over > most ? undefined : open;
  }

  /** Looks for a number to begin with. */
  *#goDown(top: number): Generator<undefined, void> {
    const {least, from} = this.#ladder;
    for (let n = Math.min(from, top), stride = 1; !(yield* this.#attempt(n, fewRounds)); stride *= 2) {
      this.#over = n;
      if (n === least) return;
      n = Math.max(least, n - stride);
    }
  }

  /** In growing strides, until one fails; then halving. */
  *#goUp(): Generator<undefined, void> {
    for (let stride = 1, halving = false; this.#reached !== undefined && this.#over - this.#reached > 1; stride *= 2) {
      const n: number = halving ? Math.floor((this.#reached + this.#over) / 2) : Math.min(this.#reached + stride, this.#over - 1);
      if (yield* this.#attempt(n, fewRounds)) continue;
      this.#over = n;
      halving = true;
    }
  }

  /** Tries the next number, and betters what there is, until that number is reached; false once neither gets on. */
  *#insist(top: number): Generator<undefined, boolean> {
    const {least} = this.#ladder;
    for (;;) {
      const next = this.#reached === undefined ? least : this.#reached + 1;
      const further = next <= top ? this.#searchFor(next) : undefined;
      if (further && (yield* this.#attempt(next, further.rounds + 1))) return true;
      const same = this.#reached === undefined ? undefined : this.#searchFor(this.#reached);
      if (same && this.#reached !== undefined) yield* this.#better(this.#reached, same);
      if (further?.done !== false && same?.done !== false) return false;
    }
  }

  /** Looks for a layout for a number for so many rounds in all; whether there is one. */
  *#attempt(n: number, rounds: number): Generator<undefined, boolean> {
    const search = this.#searchFor(n);
    if (!search) return false;
    this.#trying = n;
    while (!isWhole(search.found) && !search.done && search.rounds < rounds) {
      search.step();
      yield;
    }
    this.#trying = undefined;
    if (search.found) this.#offer(n, search.found);
    if (!isWhole(search.found)) {
      this.#failed = Math.min(n, this.#failed ?? n);
      return false;
    }
    this.#reached = n;
    if (this.#failed !== undefined && this.#failed <= n) this.#failed = undefined;
    for (const each of this.#searches.keys()) if (each < n) this.#searches.delete(each);
    return true;
  }

  /** One round for the number reached. */
  *#better(n: number, search: SheetSearch): Generator<undefined, void> {
    const rounds = search.rounds + 1;
    while (!search.done && search.rounds < rounds) {
      search.step();
      if (search.found && isWhole(search.found)) this.#offer(n, search.found);
      yield;
    }
  }

  #offer(n: number, found: Found): void {
    const {n: shown = -Infinity, found: before} = this.#shown ?? {};
    if (isWhole(found) ? !isWhole(before) || n >= shown : before === undefined && !this.#ladder.known) {
      if (found !== before) this.#shown = {n, found};
    }
  }

  #searchFor(n: number): SheetSearch | undefined {
    const kept = this.#searches.get(n);
    if (kept) return kept;
    const job = this.#ladder.jobOf(n);
    const search = job && new SheetSearch(job, this.#options);
    if (search) this.#searches.set(n, search);
    return search;
  }
}

const isWhole = (found: Found | undefined): boolean => found?.unplaced.length === 0;
