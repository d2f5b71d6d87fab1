/** Parts on sheets of board: a first placement, the search for a better one, and how to mark out and cut it. Lengths in m. */
export type {Layout, Leftover, PartToPlace, Placed, SheetStock, Turn, Unplaced} from './layout.js';
export {lowerBoundSheets} from './lower-bound.js';
export {placeParts} from './place-parts.js';
export {cutSheets, glidersFromBoard} from './from-parts.js';
export type {CutSheets, GlidersFromBoard, ToCut} from './from-parts.js';
export {longestWing} from './longest-wing.js';
export type {LongestWing} from './longest-wing.js';
export {ladderOf} from './sought.js';
export type {GlidersSought, LayoutSought, Sought, SpanSought} from './sought.js';
export * from './engine/index.js';
