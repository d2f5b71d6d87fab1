import {planeAero} from '../aero/plane-aero.js';
import {asBuilt} from '../as-built/as-built.js';
import type {GliderDesign} from '../design/design.js';
import {mostMass, tooHeavy} from '../flight/throwable.js';
import {good, refused, type Outcome} from '../problem.js';
import {planeBalance, type PlaneBalance} from './plane-balance.js';

/** The balance of a plane that a hand could throw: no other is worth balancing. Refused as {@link planeBalance} and {@link tooHeavy}. */
export function throwableBalance(design: GliderDesign): Outcome<PlaneBalance> {
  const balance = planeBalance(design);
  if (!balance.ok) return balance;
  const {wing, tail, arrangement, board, measured} = asBuilt(design).design;
  const solved = planeAero(wing, tail, arrangement, board);
  if (!solved.ok) return solved;
  const {mass, masses} = balance.value, {shape, camber} = solved.value;
  const heavy = tooHeavy(mass, masses.items, shape.wing.area, camber, {measured, board});
  return heavy ? refused(heavy) : balance;
}

/** The most that a design's plane may weigh to be thrown by hand, kg. Refused as `planeAero`. */
export function mostThrowable(design: GliderDesign): Outcome<number> {
  const {wing, tail, arrangement, board} = asBuilt(design).design;
  const solved = planeAero(wing, tail, arrangement, board);
  return solved.ok ? good(mostMass(solved.value.shape.wing.area, solved.value.camber)) : solved;
}
