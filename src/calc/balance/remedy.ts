import type {GliderDesign} from '../design/design.js';
import {good, refused, type Outcome} from '../problem.js';
import {massToAdd, together} from './adding.js';
import {clayBall} from './clay-ball.js';
import {balancedAt, type Balanced, type PlaneBalance} from './plane-balance.js';

/** Where weight can be fitted, m behind the nose. */
export interface Reach {
  readonly from: number;
  readonly to: number;
}

/** A mass to fit, and the plane with it. */
export interface Addition {
  readonly mass: number;
  /** Its centre, behind the nose. */
  readonly place: number;
  readonly after: Balanced;
}

/** How weight puts a balance right. */
export interface Remedy {
  /** The end that lacks weight. */
  readonly end: 'nose' | 'tail';
  readonly reach: Reach;
  /** Where weight goes: where the design says, or near the end that needs it if that is of no use. */
  readonly place: number;
  /** Why it does not go where the design says: there it would be of no use, or there is no body. */
  readonly placeMoved: 'of-no-use' | 'off-body' | undefined;
  /** As much as just reaches the target. */
  readonly least: Addition;
  /** As much as reaches its middle. */
  readonly middle: Addition;
  /** Diameter of a ball of modelling clay that weighs the latter, m. */
  readonly clayBall: number;
  /** How far the first grams at that place move the balance, m/kg; less than nothing is forward. */
  readonly perMass: number;
}

/** Near an end of the body, where a weight goes if nobody says where. */
const fromEnd = 0.015;

/** The stretch of body in front of the wing, or behind it, in which weight can lie: never beyond its ends, where nothing holds it. */
export const reachOf = (end: Remedy['end'], {wingAt}: PlaneBalance, {length}: GliderDesign['body'], chord: number): Reach =>
  end === 'nose' ? {from: 0, to: Math.min(wingAt, length)} : {from: Math.min(wingAt + chord, length), to: length};

/** A plane with a mass fitted. */
export function withMass(plane: PlaneBalance, mass: number, place: number): Addition {
  const whole = together(plane, {mass, at: place});
  return {mass, place, after: balancedAt(plane, whole.mass, whole.at)};
}

/**
 * The weight that brings a plane into its target, and where; undefined for a plane that needs none.
 *
 * Refused: 'balance-beyond-plane' {at} for a balance point beyond nose or tail, which no weight should mend before the entries
 * are looked at, 'weight-too-much' {mass} where the place is so near the target that it would take more than the plane weighs, and 'no-room-for-weight' where that is
 * so at the very end of the body too, or the target lies beyond it.
 */
export function remedyOf(plane: PlaneBalance, design: GliderDesign): Outcome<Remedy | undefined> {
  const {body, wing, ballast} = design;
  if (plane.heavy === 'neither') return good(undefined);
  if (plane.at < 0 || plane.at > body.length) {
    return refused({code: 'balance-beyond-plane', path: 'measured.balance', args: {at: plane.behindWing}});
  }
  const end = plane.heavy === 'tail' ? 'nose' : 'tail';
  const reach = reachOf(end, plane, body, wing.chord);
  const onBody = Math.min(Math.max(ballast.at, 0), body.length);
  const {from, to, middle} = plane.target;
  const isOfUse = (at: number): boolean => end === 'nose' ? at < from : at > to;
  const [nearEnd, veryEnd] = end === 'nose' ? [Math.min(fromEnd, plane.wingAt), 0] : [Math.max(body.length - fromEnd, 0), body.length];
  const place = [onBody, nearEnd, veryEnd].find(isOfUse);
  const mostUseful = massToAdd(plane, middle, veryEnd);
  if (place === undefined || !mostUseful.ok || mostUseful.value > plane.mass) {
    return refused({code: 'no-room-for-weight', path: 'arrangement.wingAt', also: ['body.length']});
  }
  const edge = massToAdd(plane, end === 'nose' ? to : from, place);
  const full = massToAdd(plane, middle, place);
  if (!edge.ok) return edge;
  if (!full.ok) return full;
  if (full.value > plane.mass) return refused({code: 'weight-too-much', path: 'ballast.at', args: {mass: full.value}});
  return good({
    end, reach, place, placeMoved: !isOfUse(onBody) ? 'of-no-use' : onBody !== ballast.at ? 'off-body' : undefined,
    least: withMass(plane, edge.value, place), middle: withMass(plane, full.value, place),
    clayBall: clayBall(full.value), perMass: (place - plane.at) / plane.mass,
  });
}
