export type {Board, Box, CutNode, Cutout, Found, FoundSheet, HeldPiece, Job, JobPart, Spliced, WayToCut} from './job.js';
export {mostCorners, mostPieces} from './ready.js';
export {SheetSearch} from './search.js';
