export type {Layout, Leftover, PartToPlace, Placed, SheetStock, Turn, Unplaced} from './layout.js';
export {lowerBoundSheets} from './lower-bound.js';
export {placeParts} from './place-parts.js';
