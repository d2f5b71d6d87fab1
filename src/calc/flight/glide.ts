import {gravity, type Air} from '../aero/air.js';
import {parasiteDrag} from '../aero/parasite.js';
import {amountsOf, total, totalOfPairs, type Setting} from '../aero/plane-loads.js';
import {rangeOf, type Range} from '../aero/range.js';
import {lostSuction, reynoldsOfModel} from '../aero/section/board-drag.js';
import type {FlyingPlane} from './flying-plane.js';

/** A steady glide in still air. */
export interface Glide {
  readonly setting: Setting;
  /** Lift coefficient on the wing's area. */
  readonly lift: number;
  readonly drag: Range;
  /** The usual drag by what makes it: friction and blunt edges, span, lost suction. */
  readonly dragOf: {readonly parasite: number; readonly induced: number; readonly suction: number};
  readonly speed: number;
  /** How far it glides for each metre of height: most with the least drag. */
  readonly ratio: Range;
  /** m/s downwards: least with the least drag. */
  readonly sink: Range;
  /** rad below level. */
  readonly angle: number;
  /** Of the wing's mean chord, and whether boards have been measured there. */
  readonly reynolds: number;
  readonly measured: boolean;
}

/** A force balance: how fast and how steeply a plane of some loading glides with a lift and a drag coefficient. */
export interface Balance {
  readonly speed: number;
  readonly angle: number;
  readonly sink: number;
}

/**
 * Weight, lift and drag in balance: tan γ = C_D/C_L, V = √(2 m g cos γ / (ρ S C_L)), sink = V sin γ. R. F. Stengel, Flight Dynamics (2004), section 2.6.
 *
 * @param load weight over wing area, N/m²
 */
export function glideBalance(lift: number, drag: number, load: number, density: number): Balance {
  const angle = Math.atan2(drag, lift);
  const speed = Math.sqrt(2 * load * Math.cos(angle) / (density * lift));
  return {speed, angle, sink: speed * Math.sin(angle)};
}

/**
 * The glide of a plane at a setting with lift. The friction depends on the speed and the speed a little on the drag: one round, from the speed
 * of a level glide, leaves less than a part in a thousand.
 */
export function glideAt(plane: FlyingPlane, setting: Setting, air: Air): Glide {
  const {aero, parasite, mass} = plane;
  const amounts = amountsOf(setting);
  const lift = total(plane.lift, amounts);
  const induced = Math.max(totalOfPairs(aero.induced, amounts), 0), suction = Math.max(totalOfPairs(aero.suction, amounts), 0);
  const load = mass * gravity / parasite.area;
  const level = parasiteDrag(parasite, glideBalance(lift, 0, load, air.density).speed, air);
  const {speed} = glideBalance(lift, level.usual + induced + lostSuction.usual * suction, load, air.density);
  const flat = parasiteDrag(parasite, speed, air);
  const drag = rangeOf((end) => flat[end] + induced + lostSuction[end] * suction);
  const {angle} = glideBalance(lift, drag.usual, load, air.density);
  const reynolds = speed * aero.shape.wing.meanChord / air.kinematicViscosity;
  return {
    setting, lift, drag, dragOf: {parasite: flat.usual, induced, suction: lostSuction.usual * suction}, speed, angle,
    ratio: {least: lift / drag.most, usual: lift / drag.usual, most: lift / drag.least},
    sink: rangeOf((end) => glideBalance(lift, drag[end], load, air.density).sink),
    reynolds, measured: reynolds >= reynoldsOfModel[0] && reynolds <= reynoldsOfModel[1],
  };
}
