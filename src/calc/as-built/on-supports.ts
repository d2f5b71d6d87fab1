import {good, refused, type Outcome, type Problem} from '../problem.js';

/** A plane that lies on two supports, one of them on a scale. Places behind the wing's front edge in the middle, m; masses in kg. */
export interface OnSupports {
  readonly front: number;
  readonly rear: number;
  readonly scale: 'front' | 'rear';
  /** What the scale reads, the support itself taken off. */
  readonly reading: number;
  /** What the whole plane weighs. */
  readonly mass: number;
}

/**
 * Where a plane balances, from what one of two supports carries: moments about the other, x = x_f + (x_r − x_f) m_r / m. Law of the lever.
 *
 * Refused: 'supports-crossed' where the rear one does not stand behind the front one, 'reading-above-mass' {mass}, 'plane-without-mass'.
 */
export function balanceOnSupports({front, rear, scale, reading, mass}: OnSupports): Outcome<number> {
  if (!(rear > front)) return refused({code: 'supports-crossed'});
  if (!(mass > 0)) return refused({code: 'plane-without-mass'});
  if (!(reading >= 0 && reading <= mass)) return refused({code: 'reading-above-mass', args: {mass}});
  const share = reading / mass;
  return good(front + (rear - front) * (scale === 'rear' ? share : 1 - share));
}

/** A mass and where it balances. */
export interface Weighed { readonly mass: number; readonly at: number }

/**
 * The plane without the weights that are fitted to it, by moments. Refused: 'weights-outweigh-plane' {mass, most} where they alone weigh as much or
 * more.
 *
 * @param weights places along the same line as the plane's
 */
export function withoutWeights(plane: Weighed, weights: readonly Weighed[]): Outcome<Weighed> {
  const fitted = weights.reduce((sum, {mass}) => sum + mass, 0);
  const mass = plane.mass - fitted;
  const problem: Problem = {code: 'weights-outweigh-plane', args: {kind: 'mass', fitted, plane: plane.mass}};
  if (!(mass > 0)) return refused(problem);
  return good({mass, at: (plane.mass * plane.at - weights.reduce((sum, one) => sum + one.mass * one.at, 0)) / mass});
}
