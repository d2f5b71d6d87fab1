import {good, refused, type Outcome} from '../../problem.js';
import {lengthProblems, refusal} from './lengths.js';
import {foldFromProp, placeForFold, propForFold, type Panel, type PropPlace} from './prop.js';
import type {PropPlacing} from './stack.js';

/**
 * A slip pushed under the rear of the tailplane, in metres: its front upper edge touches `fromPivot` behind the pivot, or
 * it is `width` wide and flush with the rear edge. The pivot is the lower front edge, or the step that it overhangs.
 */
export type TailSlip =
  | {readonly height: number; readonly fromPivot: number}
  | {readonly height: number; readonly width: number};

/** A slip whose height is not known yet. */
export type TailSlipPlace = {readonly fromPivot: number} | {readonly width: number};

/**
 * The angle in rad by which a slip raises the rear edge: tan d = h / x, or c sin d − w tan d = h, least root, where it is
 * flush at the rear. Right-angled triangles, the same as a propped panel's; own derivation. Foam that gives way by half a
 * millimetre can cost half a degree: edge heights measured on the plane are better.
 *
 * Refused as `foldFromProp`.
 *
 * @param chord from the pivot to the rear edge, along the lower face
 */
export function slipAngle(chord: number, slip: TailSlip): Outcome<number> {
  const raised = foldFromProp(plate(chord), {...propOf(slip), height: slip.height});
  return raised.ok ? good(raised.value.angle) : raised;
}

/** The height of the slip that a wanted angle needs: the exact inverse of `slipAngle`. Refused as `propForFold`. */
export const slipForAngle = (chord: number, angle: number, place: TailSlipPlace): Outcome<{readonly height: number}> =>
  propForFold(plate(chord), angle, propOf(place));

/** Where a slip at hand must touch for a wanted angle. Refused as `placeForFold`. */
export const slipPlaceForAngle = (chord: number, angle: number, height: number): Outcome<PropPlace> =>
  placeForFold(plate(chord), angle, height);

/**
 * The angle in rad from the heights of the two edges over one level line: asin((z_rear − z_front) / c); less than 0 with the
 * front edge higher.
 *
 * Refused: `edges-too-far-apart` {most} when they differ by more than the chord, and lengths that cannot be.
 */
export function angleFromEdges(chord: number, front: number, rear: number): Outcome<number> {
  const problems = [...lengthProblems({chord}), ...lengthProblems({front: Math.abs(front), rear: Math.abs(rear)}, 0)];
  if (problems.length) return refused(...problems);
  return Math.abs(rear - front) <= chord ? good(Math.asin((rear - front) / chord)) : refusal('edges-too-far-apart', {most: chord});
}

/** The height in metres at which the rear edge stands for a wanted angle: z_front + c sin d. */
export const rearEdgeForAngle = (chord: number, front: number, angle: number): number => front + chord * Math.sin(angle);

/** A tailplane lies on its pivot as a panel whose skin lies on the bench does; its thickness plays no part. */
const plate = (length: number): Panel => ({length, thickness: 1e-3, face: 'closing'});

const propOf = (place: TailSlipPlace): PropPlacing =>
  ('width' in place ? {where: 'plumb', width: place.width} : {where: 'bench', fromCrease: place.fromPivot});
