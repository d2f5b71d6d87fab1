import {weightsForBalance} from '../balance/weights-for-balance.js';
import {weightAt, withMore} from '../balance/with-more.js';
import type {GliderDesign} from '../design/design.js';
import type {FlyingPlane} from '../flight/flying-plane.js';
import type {Problem} from '../problem.js';
import type {Values} from './change.js';
import {holder} from './levers.js';

/** Weight at the nose that brings a balance forward to the least static margin wanted. */
export interface AheadOfLimit {
  readonly forward: number;
  /** Missing where no weight at the nose does it. */
  readonly weight?: {readonly mass: number; readonly at: number; /** Whether a weight is there already. */ readonly fitted: boolean; readonly values: Values};
}

/**
 * What has to come first where a plane balances behind the limit that its builder set; nothing where it does not. The weight is the one that the balance point
 * names; where that takes weights off the tail first, or knows no place, the mass at the nose that just does it, in half grams, rounded up.
 */
export function behindLimit({margin, wanted: [least], mass, balance, wingAt, aero}: FlyingPlane, design: GliderDesign): AheadOfLimit | undefined {
  const {ballast} = design;
  if (margin >= least - 1e-6) return undefined;
  const forward = (least - margin) * aero.shape.wing.meanAerodynamicChord, place = balance + wingAt - forward;
  const named = weightsForBalance(design), on = named.ok && named.value?.off.length === 0 ? named.value.on : undefined;
  if (named.ok && named.value?.heavy === 'tail' && on) {
    return {forward, weight: {mass: on.mass, at: on.at, fitted: on.together > on.mass, values: {'ballast.masses': named.value.masses}}};
  }
  const at = ballast.at < place ? holder(ballast.at) : Math.min(0.015, wingAt);
  const needed = mass * forward / (place - at);
  if (!(needed > 0 && needed < mass)) return {forward};
  const grams = Math.ceil(needed * 2e3) / 2e3;
  return {forward, weight: {mass: grams, at, fitted: weightAt(ballast.masses, at) !== undefined, values: {'ballast.masses': withMore(ballast.masses, grams, at)}}};
}

/** The same as a problem: nobody should trim such a plane by its tail or its throw. */
export const problemBehindLimit = ({margin, wanted: [least]}: FlyingPlane, {forward, weight}: AheadOfLimit): Problem =>
  ({code: 'balance-behind-limit', path: 'ballast.masses', args: {margin, least, forward, ...(weight && {mass: weight.mass, at: weight.at, ...(weight.fitted && {fitted: 'yes'})})}});
