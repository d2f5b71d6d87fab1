/** What stands at a place of a flat array, known to be there. */
export const at = (numbers: Float64Array | Int32Array | Int16Array, i: number): number => numbers[i] as number;

/**
 * Many half-filled layouts side by side, in flat arrays.
 *
 * Of each it keeps the skyline of the room that is being filled: segments from left to right, each with where it begins
 * (`x`), how high it is filled (`top`), and how deep the line at its left reaches down (`base`).
 *
 * A straight cut down that line ends at `base`. So two neighbours filled to one height may lie under one piece only if the
 * line between them reaches no deeper than the lines outside them: otherwise one of the two belongs to a wider column that
 * is cut off first. Where any outline may be cut every base is 0, and neighbours of one height always join.
 */
export class Frontier {
  count = 0;
  /** Places for segments, and numbers of pieces left, for each layout. */
  most = 0;
  kinds = 0;
  segments = new Int32Array(0);
  room = this.segments;
  /** How many of each kind are left, `kinds` numbers for each layout. */
  left = new Int16Array(0);
  x = new Float64Array(0);
  top = this.x;
  base = this.x;
  /** Area that is lost for good, and area of the pieces. */
  waste = this.x;
  placed = this.x;
  /** The last piece placed, as a number of the trace. */
  trace = this.segments;
  /** The lowest segment. */
  lowest = this.segments;
  /** How often the lowest segment was filled up on trial, and how long it was before: only longer pieces are new to it. */
  raised = this.segments;
  before = this.x;

  /** Makes room for so many layouts, and begins with one of no pieces in the first room. The arrays are used again and again. */
  reset(size: number, most: number, counts: readonly number[]): void {
    [this.most, this.kinds, this.count] = [most, counts.length, 1];
    if (this.segments.length < size) {
      const whole = () => new Int32Array(size);
      [this.segments, this.room, this.trace, this.lowest, this.raised] = [whole(), whole(), whole(), whole(), whole()];
      [this.waste, this.placed, this.before] = [new Float64Array(size), new Float64Array(size), new Float64Array(size)];
    }
    if (this.x.length < size * most) {
      [this.x, this.top, this.base] = [new Float64Array(size * most), new Float64Array(size * most), new Float64Array(size * most)];
    }
    if (this.left.length < size * counts.length) this.left = new Int16Array(size * counts.length);
    this.left.set(counts);
    this.trace[0] = -1;
    for (const start of [this.room, this.raised, this.waste, this.placed, this.before]) start[0] = 0;
    this.open(0);
  }

  /** Layout k begins an empty room. */
  open(k: number): void {
    this.segments[k] = 1;
    this.x[k * this.most] = this.top[k * this.most] = 0;
    this.base[k * this.most] = -1;
  }

  findLowest(k: number): number {
    const from = k * this.most, end = from + at(this.segments, k);
    let lowest = from;
    for (let i = from + 1; i < end; i++) if (at(this.top, i) < at(this.top, lowest)) lowest = i;
    return this.lowest[k] = lowest - from;
  }

  /** How deep the line left of a segment reaches; −1 for the edges of the room. */
  line(k: number, segment: number): number {
    return segment > 0 && segment < at(this.segments, k) ? at(this.base, k * this.most + segment) : -1;
  }

  /** Whether the segments on both sides of the line left of `segment` join once they are of one height. */
  joins(k: number, segment: number): boolean {
    const line = this.line(k, segment);
    return line >= 0 && line >= this.line(k, segment - 1) && line >= this.line(k, segment + 1);
  }

  /** How high a segment must be filled up, at least, to join what it can join first. */
  nextHeight(k: number, segment: number): number {
    const from = k * this.most;
    const left = this.line(k, segment), right = this.line(k, segment + 1);
    let beside = Infinity, beyond = Infinity;
    if (left >= right) {
      let i = segment - 1;
      beside = at(this.top, from + i);
      for (; this.line(k, i) > left; i--) beside = Math.max(beside, at(this.top, from + i - 1));
    }
    if (right >= left) {
      let i = segment + 1;
      beyond = at(this.top, from + i);
      for (; this.line(k, i + 1) > right; i++) beyond = Math.max(beyond, at(this.top, from + i + 1));
    }
    return Math.min(beside, beyond);
  }

  /** Joins neighbours of one height wherever that is allowed. */
  join(k: number): void {
    const {x, top, base} = this;
    const from = k * this.most;
    for (let s = 1; s < at(this.segments, k);) {
      if (at(top, from + s) !== at(top, from + s - 1) || !this.joins(k, s)) {
        s++;
        continue;
      }
      const end = from + (this.segments[k] = at(this.segments, k) - 1);
      for (let i = from + s; i < end; i++) {
        x[i] = at(x, i + 1);
        top[i] = at(top, i + 1);
        base[i] = at(base, i + 1);
      }
      if (s > 1) s--;   // the line before may be the deepest now
    }
  }
}
