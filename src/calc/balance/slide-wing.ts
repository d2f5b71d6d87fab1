import {planeNeutralPoint} from '../aero/handbook/plane-neutral-point.js';
import {asBuilt} from '../as-built/as-built.js';
import type {GliderDesign} from '../design/design.js';
import {good, refused, type Outcome} from '../problem.js';
import {balancedAt, referenceOf, targetOf, type Balanced, type PlaneBalance} from './plane-balance.js';

/** The wing slid along its body until the plane balances in the middle of its target. */
export interface Slide {
  /** Backwards; less than nothing is forward. m. */
  readonly by: number;
  readonly wingAt: number;
  readonly after: Balanced;
}

/** The model is asked again until the place it gives moves by less than this, m. */
const still = 1e-9;

/**
 * How far to slide the wing instead of adding weight. The balance goes along by the wing's share of the mass, and the target
 * goes with the wing, but less and less as the tail's arm shortens: solved, not divided. The handbook, moved by what the flight model is from it at the
 * last place, is halved in on; the model, which takes longer, is asked once for each such place.
 *
 * Refused: 'slide-off-body' where no place between the nose and the tail does it, and as `referenceOf`.
 */
export function slideWing(plane: PlaneBalance, planned: GliderDesign): Outcome<Slide> {
  const {wing, tail, body, arrangement, board, balance} = asBuilt(planned).design;
  const share = plane.masses.onWing / plane.mass;
  const last = Math.min(body.length, arrangement.tailAt) - wing.chord;
  let {wingAt} = plane, away = plane.neutralPoint - plane.handbook.behindWing;
  for (let times = 0; times < 12; times++) {
    /** How far behind the middle of its target the plane would balance. */
    const short = (at: number): number | undefined => {
      const handbook = planeNeutralPoint(wing, tail, {...arrangement, wingAt: at}, board);
      if (!handbook.ok) return undefined;
      const reference = {neutralPoint: handbook.value.behindWing + away, handbook: handbook.value, wingAt: at};
      return plane.at + share * (at - plane.wingAt) - targetOf(reference, balance).middle;
    };
    const next = halved(short, last);
    if (next === undefined) break;
    const reference = referenceOf(wing, body, tail, {...arrangement, wingAt: next}, board);
    if (!reference.ok) return reference;
    away = reference.value.neutralPoint - reference.value.handbook.behindWing;
    const moved = Math.abs(next - wingAt);
    wingAt = next;
    if (moved > still) continue;
    const by = wingAt - plane.wingAt;
    return good({by, wingAt, after: balancedAt(reference.value, plane.mass, plane.at + share * by)});
  }
  return refused({code: 'slide-off-body', path: 'arrangement.wingAt'});
}

/** Where a falling function of a place from nothing to the last is nothing. */
function halved(of: (at: number) => number | undefined, last: number): number | undefined {
  const [first, end] = [of(0), of(last)];
  if (first === undefined || end === undefined || first < 0 || end > 0) return undefined;
  let [low, high] = [0, last];
  // fifty halvings leave nothing of a metre
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2, left = of(middle);
    if (left === undefined) return undefined;
    if (left > 0) low = middle; else high = middle;
  }
  return (low + high) / 2;
}
