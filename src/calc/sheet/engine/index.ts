export {cuttingOrder, type CutStep, type EdgeCut, type OutlineCut, type RulerCut} from './cutting-order.js';
export type {Line} from './divide.js';
export type {Board, Box, CutNode, Cutout, Found, FoundSheet, HeldPiece, Job, JobPart, Spliced, WayToCut} from './job.js';
export {LargestSearch, type Ladder, type Reached} from './largest.js';
export {markingOut, type MarkingOut, type Tick} from './marking-out.js';
export {mostPieces} from '../check.js';
export {mostCorners} from './ready.js';
export {SheetSearch} from './search.js';
