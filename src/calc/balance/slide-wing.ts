import {planeNeutralPoint} from '../aero/handbook/plane-neutral-point.js';
import type {GliderDesign} from '../design/design.js';
import {good, refused, type Outcome} from '../problem.js';
import {balancedAt, targetOf, type Balanced, type PlaneBalance} from './plane-balance.js';

/** The wing slid along its body until the plane balances in the middle of its target. */
export interface Slide {
  /** Backwards; less than nothing is forward. m. */
  readonly by: number;
  readonly wingAt: number;
  readonly after: Balanced;
}

/**
 * How far to slide the wing instead of adding weight. The balance goes along by the wing's share of the mass, and the target
 * goes with the wing, but less and less as the tail's arm shortens: solved by halving, not divided.
 *
 * Refused: 'slide-off-body' where no place between the nose and the tail does it.
 */
export function slideWing(plane: PlaneBalance, {wing, tail, body, arrangement, board, balance}: GliderDesign): Outcome<Slide> {
  const share = plane.masses.onWing / plane.mass;
  const at = (wingAt: number): {readonly short: number; readonly slide: Slide} | undefined => {
    const neutral = planeNeutralPoint(wing, tail, {...arrangement, wingAt}, board);
    if (!neutral.ok) return undefined;
    const reference = {neutral: neutral.value, wingAt};
    const by = wingAt - plane.wingAt;
    const balances = plane.at + share * by;
    return {short: balances - targetOf(reference, balance).middle, slide: {by, wingAt, after: balancedAt(reference, plane.mass, balances)}};
  };
  const last = Math.min(body.length, arrangement.tailAt) - wing.chord;
  let [low, high] = [0, last];
  const atLow = at(low), atHigh = at(high);
  if (!atLow || !atHigh || atLow.short < 0 || atHigh.short > 0) return refused({code: 'slide-off-body', path: 'arrangement.wingAt'});
  let found = atLow;
  // fifty halvings leave nothing of a metre
  for (let i = 0; i < 50; i++) {
    const middle = at((low + high) / 2);
    if (!middle) break;
    found = middle;
    if (middle.short > 0) low = middle.slide.wingAt; else high = middle.slide.wingAt;
  }
  return good(found.slide);
}
