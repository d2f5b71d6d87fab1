import {gravity, type Air} from '../aero/air.js';
import {parasiteDrag, usualParasiteDrag} from '../aero/parasite.js';
import {amountsOf, total, totalOfPairs, type Setting} from '../aero/plane-loads.js';
import type {Range} from '../aero/range.js';
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

/** What a plane does in the air at a setting, whatever its speed: coefficients on the wing's area, those of drag not less than nothing. */
export interface Loads {
  readonly lift: number;
  readonly induced: number;
  /** Of losing all suction. */
  readonly suction: number;
}

export function loadsAt({aero, lift}: FlyingPlane, setting: Setting): Loads {
  const amounts = amountsOf(setting);
  return {lift: total(lift, amounts), induced: Math.max(totalOfPairs(aero.induced, amounts), 0), suction: Math.max(totalOfPairs(aero.suction, amounts), 0)};
}

const loadOf = ({mass, parasite}: FlyingPlane): number => mass * gravity / parasite.area;

/** The usual speed: the friction depends on it, and it a little on the drag. */
function speedOf(plane: FlyingPlane, lift: number, cost: number, air: Air): number {
  const load = loadOf(plane);
  const level = usualParasiteDrag(plane.parasite, glideBalance(lift, 0, load, air.density).speed, air);
  return glideBalance(lift, level + cost, load, air.density).speed;
}

/** How fast and how steeply a plane glides as usual, without all else that can be said of it: as {@link glideAt}. */
export function usualBalance(plane: FlyingPlane, {lift, induced, suction}: Loads, air: Air): Balance {
  const cost = induced + lostSuction.usual * suction;
  return glideBalance(lift, usualParasiteDrag(plane.parasite, speedOf(plane, lift, cost, air), air) + cost, loadOf(plane), air.density);
}

/**
 * The glide of a plane at a setting with lift. The friction depends on the speed and the speed a little on the drag: one round, from the speed
 * of a level glide, leaves less than a part in a thousand.
 */
export const glideAt = (plane: FlyingPlane, setting: Setting, air: Air): Glide => glideWith(plane, setting, loadsAt(plane, setting), air);

/** The same with the loads at that setting. */
export function glideWith(plane: FlyingPlane, setting: Setting, {lift, induced, suction}: Loads, air: Air): Glide {
  const {aero, parasite} = plane, load = loadOf(plane);
  const speed = speedOf(plane, lift, induced + lostSuction.usual * suction, air);
  const flat = parasiteDrag(parasite, speed, air);
  const drag: Range = {
    least: flat.least + induced + lostSuction.least * suction, usual: flat.usual + induced + lostSuction.usual * suction,
    most: flat.most + induced + lostSuction.most * suction,
  };
  const sink = (coefficient: number): number => glideBalance(lift, coefficient, load, air.density).sink;
  const reynolds = speed * aero.shape.wing.meanChord / air.kinematicViscosity;
  return {
    setting, lift, drag, dragOf: {parasite: flat.usual, induced, suction: lostSuction.usual * suction}, speed, angle: Math.atan2(drag.usual, lift),
    ratio: {least: lift / drag.most, usual: lift / drag.usual, most: lift / drag.least},
    sink: {least: sink(drag.least), usual: sink(drag.usual), most: sink(drag.most)},
    reynolds, measured: reynolds >= reynoldsOfModel[0] && reynolds <= reynoldsOfModel[1],
  };
}
