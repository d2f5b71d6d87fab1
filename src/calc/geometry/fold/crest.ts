import {good, refused, type Outcome, type Problem} from '../../problem.js';
import type {Point} from '../polygon/point.js';
import {grooveStop, grooveToClose} from './groove.js';
import {leastRoot} from './least-root.js';
import {foldProblems, lengthProblems, problem, refusal, rightAngle, rounding} from './lengths.js';
import type {FoldFace} from './stack.js';

/** A stack under the crest; without a width, a ridge. Metres. */
export interface CrestStack {
  readonly height: number;
  readonly width?: number;
}

/**
 * A board folded over a stack, both free edges on the bench: metres and radians. Bench coordinates: the bench is y = 0, the
 * ridge of the two lower faces lies above x = 0, the rear panel falls away towards +x.
 */
export interface FoldOverCrest {
  /** The whole fold, f₁ + f₂. */
  readonly angle: number;
  /** Slope of the front panel to the bench. */
  readonly front: number;
  /** Slope of the rear panel to the bench. */
  readonly rear: number;
  /** Height at which the two lower faces meet. */
  readonly ridge: number;
  /** The stack's two upper edges, front and rear: one on each panel. A stack without width touches at the ridge. */
  readonly contacts: readonly [Point, Point];
  /** Where the two free edges stand on the bench; in the air when the groove stops the fold. */
  readonly frontEdge: Point;
  readonly rearEdge: Point;
  readonly stoppedByGroove: boolean;
}

/**
 * The fold of a board laid over a stack with both its free edges pressed down to the bench.
 *
 * Each panel leans on one upper edge of the stack. With lower faces a and b long, the board, the bench and the ridge make
 * a triangle: base c = √(a² + b² + 2 a b cos f), ridge H = a b sin f / c, and a stack w wide reaches h = H (1 − w / c); a
 * ridge without width gives f = asin(h / a) + asin(h / b), about twice what the same stack gives under one edge. The least
 * root, since the board comes down from flat. Own derivation.
 *
 * Over a crest the faces change places: `closing` has the whole skin facing up, and its groove underneath takes t tan(f/2)
 * off each lower face; `opening` has the whole skin on the stack.
 *
 * Refused: `prop-too-tall` {height, most}, `prop-too-wide` {width, most}, and lengths that cannot be.
 *
 * @param front length of the front panel, from the crease to its edge
 * @param rear length of the rear panel
 * @param groove width of a V groove already cut: a closing fold stops where it is shut
 */
export function foldOverCrest(
  front: number, rear: number, {height, width = 0}: CrestStack, thickness: number, face: FoldFace, groove?: number,
): Outcome<FoldOverCrest> {
  const problems = [...lengthProblems({height}, 0), ...crestProblems(front, rear, width, thickness, groove)];
  if (problems.length) return refused(...problems);
  const roofAt = (f: number): Roof => roofOf(front, rear, thickness, face, f);
  const {at, most} = leastRoot((f) => roomUnder(roofAt(f), width), height, rightAngle);
  if (at === undefined) return refusal('prop-too-tall', {height, most});
  const angle = Math.min(at, stopOf(thickness, face, groove));
  const roof = roofAt(angle), {slope, foot, base} = roof;
  // stopped by its groove, the roof still sits on the stack and both edges hang above the bench
  const lift = height - roomUnder(roof, width);
  // under the ridge the room narrows evenly: the stack's edges divide its width as the ridge divides the base
  const near = -width * foot / base;
  return good({
    angle, front: slope, rear: angle - slope, ridge: roof.ridge + lift, stoppedByGroove: at > angle * (1 + rounding),
    contacts: [{x: near, y: height}, {x: near + width, y: height}],
    frontEdge: {x: -foot, y: lift}, rearEdge: {x: base - foot, y: lift},
  });
}

/**
 * The stack under the crest that a wanted fold needs: h = H (1 − w / c), the exact inverse of `foldOverCrest`.
 *
 * Refused: `fold-out-of-range` {angle, most}, `fold-past-groove` {angle, most}, `prop-too-wide` {width, most}, and lengths
 * that cannot be.
 */
export function stackUnderCrest(
  front: number, rear: number, angle: number, thickness: number, face: FoldFace, width = 0, groove?: number,
): Outcome<{readonly height: number}> {
  const problems = [...foldProblems(angle), ...crestProblems(front, rear, width, thickness, groove)];
  if (problems.length) return refused(...problems);
  const most = stopOf(thickness, face, groove);
  if (angle > most * (1 + rounding)) return refusal('fold-past-groove', {angle, most});
  const roof = roofOf(front, rear, thickness, face, angle);
  return width < roof.base ? good({height: roomUnder(roof, width)}) : refusal('prop-too-wide', {width, most: roof.base});
}

/** The triangle of the two lower faces and the bench: slope of its front side, where that side stands before the ridge. */
interface Roof {
  readonly slope: number;
  readonly foot: number;
  readonly ridge: number;
  readonly base: number;
}

function roofOf(front: number, rear: number, thickness: number, face: FoldFace, angle: number): Roof {
  const bevel = face === 'closing' ? grooveToClose(thickness, angle) / 2 : 0;
  const a = Math.max(0, front - bevel), b = Math.max(0, rear - bevel);
  const level = a + b * Math.cos(angle), upright = b * Math.sin(angle), slope = Math.atan2(upright, level);
  return {slope, foot: a * Math.cos(slope), ridge: a * Math.sin(slope), base: Math.hypot(level, upright)};
}

/** How tall a stack of this width the roof has room for. */
const roomUnder = ({ridge, base}: Roof, width: number): number => (base > width ? ridge * (1 - width / base) : 0);

const stopOf = (thickness: number, face: FoldFace, groove: number | undefined): number =>
  face === 'closing' && groove !== undefined ? Math.min(rightAngle, grooveStop(thickness, groove)) : rightAngle;

function crestProblems(front: number, rear: number, width: number, thickness: number, groove = 1): Problem[] {
  const problems = [...lengthProblems({front, rear, thickness, groove}), ...lengthProblems({width}, 0)];
  return problems.length || width < front + rear ? problems : [problem('prop-too-wide', {width, most: front + rear})];
}
