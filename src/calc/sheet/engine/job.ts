import type {Problem} from '../../problem.js';
import type {PartToPlace, Placed, Turn, Unplaced} from '../layout.js';

/** A part to be cut. Lengths in m. */
export interface JobPart extends PartToPlace {
  /** Whether it may be made of several lengths glued end to end where it is too long for every board. */
  readonly maySplice?: boolean;
}

/** Board to cut from: sheets of one size, a roll of endless length, or a piece left over. Lengths in m. */
export interface Board {
  readonly id: string;
  /** Along x; Infinity for a roll. */
  readonly length: number;
  /** Along y. */
  readonly width: number;
  /** How many there are; without it, as many as needed. */
  readonly count?: number;
  /** Pieces left over cost nothing and are used first. */
  readonly leftover?: boolean;
}

/** A piece that lies where somebody put it, and stays there. */
export interface HeldPiece {
  readonly id: string;
  /** Pieces with the same number lie on one sheet, of the board named. */
  readonly sheet: number;
  readonly board: string;
  /** The lower left corner of its bounds on the sheet. */
  readonly x: number;
  readonly y: number;
  readonly turn: Turn;
  readonly mirrored: boolean;
}

/** How a layout is to be cut: each cut edge to edge of the piece in hand, or along any outline. */
export type WayToCut = 'straight' | 'free';

export interface Job {
  readonly parts: readonly JobPart[];
  readonly boards: readonly Board[];
  /** Kept free along all four edges of each board. */
  readonly margin: number;
  /** Kept free for the knife between parts. */
  readonly gap: number;
  readonly cuts: WayToCut;
  readonly held?: readonly HeldPiece[];
}

/** An upright rectangle of a sheet, from the sheet's corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** Pieces that lie in one upright rectangle: mostly a single one, or two that are nested. */
export interface Cutout extends Box {
  readonly pieces: readonly Placed[];
}

/** A piece of board in hand and what it is cut into. */
export interface CutNode {
  readonly box: Box;
  /** The strips that parallel cuts make of it, from its corner on; none where it is not cut. */
  readonly strips: readonly CutNode[];
  /** Whether those cuts run along x, the strips lying one above the other, rather than across. */
  readonly along: boolean;
  /** Where it is not cut: which of the cutouts it is; without that, an offcut. */
  readonly cutout?: number;
}

export interface FoundSheet {
  readonly board: Board;
  /** The number of the sheet on which pieces are held. */
  readonly held: number | undefined;
  /** Of the sheet; of a roll, what is used of it. */
  readonly length: number;
  readonly width: number;
  readonly cutouts: readonly Cutout[];
  /** How to cut it, where it can be cut edge to edge. */
  readonly plan: CutNode | undefined;
  /** The largest rectangle left over, if it is worth keeping. */
  readonly leftover: Box | undefined;
}

/** A part that is made of several lengths. */
export interface Spliced {
  readonly id: string;
  /** The parts that are cut in its stead, end to end. */
  readonly into: readonly string[];
}

/** The best layout found so far. */
export interface Found {
  readonly sheets: readonly FoundSheet[];
  readonly unplaced: readonly Unplaced[];
  /** Sheets, but for pieces left over, that no layout can do with fewer of. */
  readonly least: number;
  /** Whether everything is placed on so few. */
  readonly fewest: boolean;
  /** Cuts, and different settings of the ruler, over all sheets that are not cut alike. */
  readonly cuts: number;
  readonly settings: number;
  readonly spliced: readonly Spliced[];
  /** What was set aside: boards and counts that make no sense, pieces that cannot be held where they are. */
  readonly problems: readonly Problem[];
}
