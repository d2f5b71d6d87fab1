import {good, refused, type Outcome} from '../problem.js';

/** Where the measured corners of a straight plane lie: m. */
export interface TipsAndTail {
  /** From the middle out to a tip, level. */
  readonly half: number;
  /** How high the tips stand over the tail. */
  readonly rise: number;
  /** From the line through the measured corners back to the place at the tail, along the body. */
  readonly back: number;
}

/** A measured distance this far from the planned one, as a share of it, was taken somewhere else. */
const unlike = 0.2;

/**
 * How far the wing stands askew to the tail, rad: more than 0 with the left tip forward. The two distances are sides of triangles on the wing's
 * half span: sin ψ = (d_l² − d_r²) / 4 h l, with l² = (d_l² + d_r²)/2 − h² − z². Law of cosines; own derivation.
 *
 * Refused: 'tip-distance-unlike' {expected} where a distance differs from that of a straight plane by more than a fifth, or no triangle has such sides.
 */
export function skewOf({half, rise, back}: TipsAndTail, left: number, right: number): Outcome<number> {
  const expected = Math.hypot(half, rise, back);
  const wrong = [['built.leftTipToTail', left], ['built.rightTipToTail', right]] as const;
  const far = wrong.find(([, distance]) => Math.abs(distance / expected - 1) > unlike);
  const along = Math.sqrt((left ** 2 + right ** 2) / 2 - half ** 2 - rise ** 2);
  const sine = (left ** 2 - right ** 2) / (4 * half * along);
  if (far || !(Math.abs(sine) < 1)) return refused({code: 'tip-distance-unlike', path: far?.[0] ?? 'built.leftTipToTail', args: {expected}});
  return good(Math.asin(sine));
}

/** The distances that a wing askew by so much leaves: the exact inverse of {@link skewOf} for a plane that is as long as planned. */
export function tipDistances({half, rise, back}: TipsAndTail, skew: number): {readonly left: number; readonly right: number} {
  const at = (side: number): number => Math.hypot(back + side * half * Math.sin(skew), half * Math.cos(skew), rise);
  return {left: at(1), right: at(-1)};
}

/**
 * How far the fins stand turned to the wing, rear edge to the right, rad. An evenly bowed body ends turned by 2 s/l; where the tip distances
 * were measured too, they hold s/l of it already, since the tail has moved aside.
 *
 * @param bow how far the tail stands to the right, m
 * @param length of the free body behind the wing, m
 */
export const finsTurned = (skew: number | undefined, bow: number | undefined, length: number): number =>
  skew === undefined ? Math.atan(2 * (bow ?? 0) / length) : skew + Math.atan((bow ?? 0) / length);
