import type {Rib, Surface} from './surface.js';

/** All panels of one chordwise column: the piece of a surface between two lines along the stream. */
export interface Strip {
  /** Index of its surface, and the group that belongs to. */
  readonly surface: number;
  readonly group: number;
  readonly chord: number;
  /** Its width, measured along the surface. */
  readonly width: number;
  /** The middle of its quarter-chord line. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Across the stream, from its inner to its outer edge. */
  readonly dy: number;
  readonly dz: number;
  /** From the surface's inner end, along the surface. */
  readonly along: number;
  /** 1, or ½ for a surface in the plane of symmetry, which has no mirror image of its own. */
  readonly share: number;
  /** Its first panel; it has `rows` of them, one behind the other. */
  readonly first: number;
  readonly rows: number;
}

/**
 * Panels of the right half, in flat lists: a bound vortex from a to b on each panel's quarter line, a control point at three
 * quarters, and the normal there (0, ny, nz).
 */
export interface Lattice {
  readonly strips: readonly Strip[];
  readonly count: number;
  readonly ax: Float64Array;
  readonly ay: Float64Array;
  readonly az: Float64Array;
  readonly bx: Float64Array;
  readonly by: Float64Array;
  readonly bz: Float64Array;
  readonly cx: Float64Array;
  readonly cy: Float64Array;
  readonly cz: Float64Array;
  readonly ny: Float64Array;
  readonly nz: Float64Array;
  /** Index of each panel's strip. */
  readonly strip: Int32Array;
}

/** The lattice of a free end stops a quarter of a panel short of it: G. J. Hough, J. Aircraft 10 (1973). */
const tipInset = 0.25;

/**
 * Covers surfaces with panels: evenly spaced along each stretch and along the chord. Ribs at one place (a step in the chord) make no
 * stretch.
 */
export function layPanels(surfaces: readonly Surface[]): Lattice {
  const strips: Strip[] = [];
  const edges: (readonly [Rib, Rib])[] = [];
  let count = 0;
  surfaces.forEach((surface, index) => {
    let along = 0;
    for (const [inner, outer] of stripEdges(surface)) {
      const dy = outer.y - inner.y, dz = outer.z - inner.z, width = Math.hypot(dy, dz);
      strips.push({
        surface: index, group: surface.group, width, dy, dz, chord: (inner.chord + outer.chord) / 2,
        x: (inner.x + outer.x) / 2 + (inner.chord + outer.chord) / 8, y: (inner.y + outer.y) / 2, z: (inner.z + outer.z) / 2,
        along: along + width / 2, share: surface.inMiddle ? 0.5 : 1, first: count, rows: surface.rows,
      });
      edges.push([inner, outer]);
      along += width;
      count += surface.rows;
    }
  });
  const list = (): Float64Array => new Float64Array(count);
  const lattice: Lattice = {
    strips, count, ax: list(), ay: list(), az: list(), bx: list(), by: list(), bz: list(), cx: list(), cy: list(), cz: list(),
    ny: list(), nz: list(), strip: new Int32Array(count),
  };
  edges.forEach(([inner, outer], index) => {
    const strip = strips[index];
    if (strip) layStrip(lattice, strip, index, inner, outer);
  });
  return lattice;
}

function layStrip(lattice: Lattice, {first, rows, dy, dz, width, y, z}: Strip, index: number, inner: Rib, outer: Rib): void {
  for (let row = 0; row < rows; row++) {
    const panel = first + row;
    const quarter = (row + 0.25) / rows, threeQuarters = (row + 0.75) / rows;
    lattice.ax[panel] = inner.x + quarter * inner.chord;
    lattice.ay[panel] = inner.y;
    lattice.az[panel] = inner.z;
    lattice.bx[panel] = outer.x + quarter * outer.chord;
    lattice.by[panel] = outer.y;
    lattice.bz[panel] = outer.z;
    lattice.cx[panel] = (inner.x + outer.x + threeQuarters * (inner.chord + outer.chord)) / 2;
    lattice.cy[panel] = y;
    lattice.cz[panel] = z;
    lattice.ny[panel] = -dz / width;
    lattice.nz[panel] = dy / width;
    lattice.strip[panel] = index;
  }
}

interface Stretch {
  readonly inner: Rib;
  readonly outer: Rib;
  readonly length: number;
}

const stretch = (inner: Rib, outer: Rib): Stretch => ({inner, outer, length: Math.hypot(outer.y - inner.y, outer.z - inner.z)});

/** The edges of the strips of a surface, from its inner end. */
function stripEdges({ribs, strips, freeTip}: Surface): (readonly [Rib, Rib])[] {
  const every = ribs.slice(1).flatMap((outer, i) => ribs[i] ? [stretch(ribs[i], outer)] : []).filter(({length}) => length > 0);
  const whole = every.reduce((sum, {length}) => sum + length, 0);
  const stretches = freeTip ? withoutShortEnd(every, whole / strips) : every;
  return stretches.flatMap(({inner, outer, length}, i) => {
    const n = Math.max(1, Math.round(strips * length / whole));
    const step = 1 / (n + (freeTip && i === stretches.length - 1 ? tipInset : 0));
    return Array.from({length: n}, (_, k) => [between(inner, outer, k * step), between(inner, outer, (k + 1) * step)] as const);
  });
}

/** A last stretch of less than half a strip goes straight on from the one before: alone it would spoil the inset of the tip. */
function withoutShortEnd(stretches: readonly Stretch[], strip: number): readonly Stretch[] {
  const last = stretches.at(-1), before = stretches.at(-2);
  return last && before && last.length < strip / 2 ? [...stretches.slice(0, -2), stretch(before.inner, last.outer)] : stretches;
}

const between = (a: Rib, b: Rib, t: number): Rib => ({
  x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y), z: a.z + t * (b.z - a.z), chord: a.chord + t * (b.chord - a.chord),
});
