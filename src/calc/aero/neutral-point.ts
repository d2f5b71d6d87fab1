import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {bodyAero} from './body-aero.js';
import {planeAero} from './plane-aero.js';

/**
 * Where more lift of the whole plane has no moment, m behind the wing's leading edge at the root: wing, tail and fins by the vortex lattice, the body's
 * nose by handbook. Weighs nothing, so that it stays the same whatever is fitted.
 *
 * Refused as {@link planeAero}.
 */
export const neutralPointOf = memo((
  wing: GliderDesign['wing'], body: GliderDesign['body'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'], board: GliderDesign['board'],
): Outcome<number> => {
  const solved = planeAero(wing, tail, arrangement, board);
  if (!solved.ok) return solved;
  const {lift: [surfaces = 1], neutralPoint, shape: {wing: {area}}} = solved.value;
  const nose = bodyAero(body, board, arrangement, wing).noseLift / area;
  // two lifts, each with its own place
  return good((surfaces * neutralPoint - nose * arrangement.wingAt) / (surfaces + nose));
});
