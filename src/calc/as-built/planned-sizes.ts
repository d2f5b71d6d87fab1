import {wingFold} from '../bench/wing-fold.js';
import type {GliderDesign} from '../design/design.js';
import {cornersOf} from './as-built.js';
import {hollowOf} from './hollow.js';
import {tipDistances} from './straightness.js';
import {plannedJoints, tipOverBench} from './tips.js';

/** What a ruler should read on a plane built as planned, m; missing where the plan cannot be built. */
export interface PlannedSizes {
  readonly hollow?: number;
  readonly tip?: number;
  /** Rear edge over front edge. */
  readonly tail: number;
  readonly wing?: number;
  readonly tipToTail: number;
}

export function plannedSizes({wing, tail, arrangement, board}: GliderDesign): PlannedSizes {
  const fold = wingFold(wing, board), joints = plannedJoints(wing, board);
  return {
    ...(fold.ok && {hollow: hollowOf(wing, board, fold.value.total), wing: fold.value.section.chord * Math.sin(-arrangement.wingIncidence) + 0}),
    ...(joints.ok && {tip: tipOverBench(wing, board, joints.value)}),
    tail: tail.chord * Math.sin(-arrangement.tailIncidence) + 0,
    tipToTail: tipDistances(cornersOf(wing, tail, arrangement, joints), 0).left,
  };
}
