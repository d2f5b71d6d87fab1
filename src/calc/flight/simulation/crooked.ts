import type {Air} from '../../aero/air.js';
import {crookedLoads} from '../../aero/crooked-loads.js';
import {amountsOf} from '../../aero/plane-loads.js';
import {totalSide, type SideForce} from '../../aero/side-loads.js';
import type {GliderDesign} from '../../design/design.js';
import {good, refused, type Outcome} from '../../problem.js';
import {carriedAir, coefficientsOf, dimensional} from '../derivatives.js';
import {flightOf, flightOfPlane} from '../flight.js';
import {fittedWith, type FlyingPlane} from '../flying-plane.js';
import type {Glide} from '../glide.js';
import {inertiaOf} from '../inertia.js';
import type {LateralDerivatives, SteadyFlight} from '../motion-equations.js';

/** What is crooked about a plane. Every positive value turns it to the right as seen from behind. */
export interface Crooked {
  /** Whole fins set with their rear edges to the right, rad. For a bent rear part see {@link wholeFin}. */
  readonly fin: number;
  /** Extra mass at the right tip (less than nothing: at the left), kg. */
  readonly tipMass: number;
  /** Left half of the wing stands at more incidence than the right by this angle, rad. */
  readonly twist: number;
}

export const straight: Crooked = {fin: 0, tipMass: 0, twist: 0};

/** Beyond these a plane is broken or a slip of the pen, either way. */
export const crookedLimits = {fin: 25 * Math.PI / 180, tipMass: 0.05, twist: 10 * Math.PI / 180} as const satisfies Crooked;
const kinds = {fin: 'angle', tipMass: 'mass', twist: 'angle'} as const;

/**
 * The angle of a whole fin that turns a plane as much as bending only its rear part does: 1 − (θ − sin θ)/π of it, cos θ = 2 share − 1.
 * H. Glauert's flap, in The Elements of Aerofoil and Airscrew Theory (1926).
 *
 * @param share of the chord behind the bend
 */
export function wholeFin(bend: number, share: number): number {
  const theta = Math.acos(Math.min(Math.max(2 * share - 1, -1), 1));
  return bend * (1 - (theta - Math.sin(theta)) / Math.PI);
}

/** Force to the right, moments right wing down and nose right; or what they do over mass and inertia. */
export interface Push { readonly side: number; readonly roll: number; readonly yaw: number }

/** A plane in its glide with what pushes it aside. SI. */
export interface CrookedPlane {
  readonly plane: FlyingPlane;
  readonly glide: Glide;
  readonly lateral: LateralDerivatives;
  readonly steady: SteadyFlight;
  /** What crooked boards do at the speed of the glide, over mass and inertia. */
  readonly boards: Push;
  /** How far right of the middle it balances. */
  readonly aside: number;
  /** kg and kg m², the air that moves along counted. */
  readonly heavy: Push;
}

/**
 * Refused: 'crooked-out-of-range' {cause, most}, and as {@link flightOf} and its `trim`. The weight at a tip counts in the trim like one in the middle.
 */
export function crookedPlane(design: GliderDesign, crooked: Crooked, air: Air): Outcome<CrookedPlane> {
  const wrong = (Object.keys(crookedLimits) as (keyof Crooked)[]).filter((cause) => !(Math.abs(crooked[cause]) <= crookedLimits[cause]));
  if (wrong.length > 0) return refused(...wrong.map((cause) => ({code: 'crooked-out-of-range', args: {cause, kind: kinds[cause], most: crookedLimits[cause]}})));
  const bare = flightOf(design, air);
  if (!bare.ok) return bare;
  const tip = bare.value.plane.aero.shape.surfaces[0]?.ribs.at(-1);
  const at = {y: tip?.y ?? 0, x: (tip?.x ?? 0) + (tip?.chord ?? 0) / 2};
  // on the wing, which may reach further back than the body
  const weight = Math.abs(crooked.tipMass);
  const flight = weight === 0 ? bare : flightOfPlane(air, fittedWith(bare.value.plane, weight, at.x));
  if (!flight.ok) return flight;
  const {plane, trim} = flight.value;
  if (!trim.ok) return trim;
  const boards = crookedLoads(plane.aero);
  if (!boards.ok) return boards;

  const {glide} = trim.value, {aero, mass, parasite: {area}} = plane, {span} = aero.shape.wing;
  const across = weight * (1 - weight / mass) * at.y ** 2;
  const middle = inertiaOf(plane, design.body);
  const inertia = {...middle, roll: middle.roll + across, yaw: middle.yaw + across};
  const {lateral, steady} = dimensional(plane, glide, inertia, coefficientsOf(plane, glide, inertia, air), air);
  const carried = carriedAir(plane, inertia.z, air.density);
  const heavy = {side: mass + carried.side, roll: inertia.roll + carried.roll, yaw: inertia.yaw + carried.yaw};

  const amounts = amountsOf(glide.setting);
  const {fin, twist} = boards.value;
  const [byFin, byTwist] = [totalSide(fin, amounts), totalSide(twist, amounts)];
  const sum = (part: keyof SideForce): number => crooked.fin * byFin[part] + crooked.twist * byTwist[part];
  // moments moved from the wing's quarter point to the balance
  const roll = sum('roll') - inertia.z / span * sum('force'), yaw = sum('yaw') + (plane.balance - aero.x) / span * sum('force');
  const pressure = air.density * glide.speed ** 2 / 2 * area;
  return good({
    plane, glide, lateral, steady, heavy, aside: crooked.tipMass * at.y / mass,
    boards: {side: pressure * sum('force') / heavy.side, roll: pressure * span * roll / heavy.roll, yaw: pressure * span * yaw / heavy.yaw},
  });
}
