import type {Polygon} from '../geometry/polygon/index.js';
import type {Problem} from '../problem.js';

/** A part to be cut from flat board. Lengths in m. */
export interface PartToPlace {
  /** Told apart by this; each part once, with its `count`. */
  readonly id: string;
  /** The outline as the part lies face up, at any place. */
  readonly outline: Polygon;
  /** How many are needed. */
  readonly count: number;
  /** Whether it may be turned by quarter turns on the sheet. */
  readonly mayTurn: boolean;
  /** Where it may not: whether it may lie the other way round all the same, as on board with a grain. */
  readonly mayTurnHalf?: boolean | undefined;
  /** Where it may not: whether it lies a quarter turned from its outline as given. */
  readonly liesAcross?: boolean | undefined;
  /** Whether it may be turned over: no for handed parts and for parts with a groove or mark on one face. */
  readonly mayMirror: boolean;
}

/** The board at hand: sheets of one size. Lengths in m. */
export interface SheetStock {
  /** Along x. */
  readonly length: number;
  /** Along y. */
  readonly width: number;
  /** Kept free along all four edges; 0 where factory edges are used. */
  readonly margin: number;
  /** Kept free for the knife between parts, never between a part and the edge. */
  readonly gap: number;
  /** Sheets at hand; without it, as many as needed. */
  readonly count?: number;
}

/** Turned counter-clockwise, in degrees. */
export type Turn = 0 | 90 | 180 | 270;

/** One piece on a sheet, seen from above with the sheet's corner at (0, 0), x along its length, y along its width. */
export interface Placed {
  readonly id: string;
  /** Which of the part's copies, from 0. */
  readonly copy: number;
  /** Which sheet, from 0. */
  readonly sheet: number;
  /** The lower left corner of the piece's bounds on the sheet. */
  readonly x: number;
  readonly y: number;
  /** First turned over about the y axis if `mirrored`, then turned. */
  readonly turn: Turn;
  readonly mirrored: boolean;
  /** The outline where it lies on the sheet, counter-clockwise. */
  readonly outline: Polygon;
}

/**
 * A piece that found no place: 'part-too-big' {id, length, width, sheetLength, sheetWidth} (in no allowed turn, sizes of
 * its bounds and of the sheet inside its margins), 'outline-empty' {id}, 'outline-crosses-itself' {id} or
 * 'sheets-run-out' {id, sheets}.
 */
export interface Unplaced {
  readonly id: string;
  readonly copy: number;
  readonly problem: Problem;
}

/** A free upright rectangle of a sheet, clear of the knife's gap. */
export interface Leftover {
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** Where every piece goes. Areas in m². */
export interface Layout {
  /** Sheets used. */
  readonly sheets: number;
  /** Sheet by sheet. */
  readonly placed: readonly Placed[];
  readonly unplaced: readonly Unplaced[];
  /** Area of all placed pieces. */
  readonly usedArea: number;
  /** Area of the sheets used less that of the pieces. */
  readonly wasteArea: number;
  /** The largest rectangle left on the last sheet, if it is worth keeping. */
  readonly leftover: Leftover | undefined;
}
