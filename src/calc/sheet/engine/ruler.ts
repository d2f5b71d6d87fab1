import type {Box, CutNode} from './job.js';
import {across, near} from './parting.js';
import {cutNodes} from './plan.js';

/** The work of cutting a sheet. */
export interface Toil {
  readonly cuts: number;
  /** Different distances that a ruler must be set to. */
  readonly settings: number;
}

/** Cuts and settings of the ruler for one sheet; where any outline may be cut, lines to draw and where to tick them off. */
export function toilOf(boxes: readonly Box[], plan: CutNode | undefined): Toil {
  const distances = plan
    ? cutNodes(plan).flatMap(({along, strips}) => strips.slice(0, -1).map(({box}) => across(along).size(box)))
    : boxes.flatMap(({x, y, length, width}) => [x, x + length, -1 - y, -1 - y - width]);
  return {cuts: distances.length, settings: new Set(distances.map((each) => Math.round(each / near / 10))).size};
}
