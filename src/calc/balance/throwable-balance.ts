import {planeAero} from '../aero/plane-aero.js';
import {asBuilt} from '../as-built/as-built.js';
import type {GliderDesign} from '../design/design.js';
import {mostMass, tooHeavy} from '../flight/throwable.js';
import {good, refused, type Outcome} from '../problem.js';
import {planeBalance, type PlaneBalance} from './plane-balance.js';

/** The plane in the air as it was built, whatever it weighs. */
const inTheAir = ({wing, tail, arrangement, board}: GliderDesign): ReturnType<typeof planeAero> => planeAero(wing, tail, arrangement, board);

/** The balance of a plane that a hand could throw: no other is worth balancing. Refused as {@link planeBalance} and {@link tooHeavy}. */
export function throwableBalance(design: GliderDesign): Outcome<PlaneBalance> {
  const balance = planeBalance(design);
  if (!balance.ok) return balance;
  const {design: built} = asBuilt(design);
  const solved = inTheAir(built);
  if (!solved.ok) return solved;
  const {mass, masses} = balance.value, {shape, camber} = solved.value;
  const heavy = tooHeavy(mass, masses.items, shape.wing.area, camber, built);
  return heavy ? refused(heavy) : balance;
}

/** The most that a design's plane may weigh to be thrown by hand, kg. Refused as {@link planeAero}. */
export function mostThrowable(design: GliderDesign): Outcome<number> {
  const solved = inTheAir(asBuilt(design).design);
  return solved.ok ? good(mostMass(solved.value.shape.wing.area, solved.value.camber)) : solved;
}
