import {gravity} from '../aero/air.js';
import {amountsOf, total} from '../aero/plane-loads.js';
import type {GliderDesign} from '../design/design.js';
import {flightOf, type Flight, type Trim} from '../flight/flight.js';
import type {FlyingPlane} from '../flight/flying-plane.js';
import type {Glide} from '../flight/glide.js';
import {inertiaOf} from '../flight/inertia.js';
import type {Crooked} from '../flight/simulation/turning.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {asBuilt, type Lopsided} from './as-built.js';
import type {Joints} from './tips.js';

/** The moment about the balance with which a half wing lifts its own side, over dynamic pressure: m³. The load stays square to its board, and as large. */
function liftingMoment({aero}: FlyingPlane, {setting}: Glide, joints: Joints, height: number): number {
  const amounts = amountsOf(setting);
  return aero.strips.filter(({group}) => group === 0).reduce((sum, {along, width, circulation}) => {
    let y = 0, z = 0, inside = 0, slope = 0;
    for (const joint of [...joints.filter(({at}) => at < along), {at: along, angle: 0}]) {
      y += (joint.at - inside) * Math.cos(slope);
      z += (joint.at - inside) * Math.sin(slope);
      inside = joint.at;
      slope += joint.angle;
    }
    return sum + 2 * width * total(circulation, amounts) * (y * Math.cos(slope) + (z - height) * Math.sin(slope));
  }, 0);
}

/**
 * The weight at the right tip, kg, that rolls a plane as much as two halves whose joints differ: each half's load tilts with its board, and the body
 * hangs beside the middle between the two. Small, since a load's lever along its own board stays what it was. Own derivation.
 */
export function tipWeightOf({plane, air}: Flight, {glide}: Trim, body: GliderDesign['body'], {left, right}: NonNullable<Lopsided['joints']>): number {
  const {z} = inertiaOf(plane, body);
  const pressure = air.density * glide.speed ** 2 / 2;
  const moment = pressure * (liftingMoment(plane, glide, left, z) - liftingMoment(plane, glide, right, z));
  return moment / (gravity * Math.cos(glide.angle) * plane.aero.shape.wing.span / 2);
}

/** What is crooked about a plane as it was measured. Refused with why there is no glide, as `flightOf`. */
export const crookedAsBuilt = memo((design: GliderDesign): Outcome<Crooked> => {
  const {lopsided: {joints, fins}} = asBuilt(design);
  const flight = flightOf(design);
  if (!flight.ok) return flight;
  const {trim} = flight.value;
  if (!trim.ok) return trim;
  return good({fin: fins, twist: 0, tipMass: joints ? tipWeightOf(flight.value, trim.value, design.body, joints) : 0});
});
