import {planeAero} from '../aero/plane-aero.js';
import {asBuilt} from '../as-built/as-built.js';
import type {GliderDesign} from '../design/design.js';
import {tooHeavy} from '../flight/throwable.js';
import {refused, type Outcome} from '../problem.js';
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
