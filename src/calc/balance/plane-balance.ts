import {neutralPointOf} from '../aero/neutral-point.js';
import {planeNeutralPoint, type PlaneNeutralPoint} from '../aero/handbook/plane-neutral-point.js';
import {asBuilt} from '../as-built/as-built.js';
import {clashesOf} from '../design/clashes.js';
import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import {centreOf, type Centre} from './mass-item.js';
import {planeMasses, type PlaneMasses} from './masses.js';
import {touching} from './touching.js';

/** A plane with one mass and one balance point. Places in m behind the nose unless they say otherwise. */
export interface Balanced {
  readonly mass: number;
  readonly at: number;
  /** Behind the wing's leading edge at the root, where fingers go. */
  readonly behindWing: number;
  /** How far the balance lies ahead of the neutral point, in mean chords. */
  readonly margin: number;
  /** kg/m², on the wing's area as flown. */
  readonly wingLoading: number;
  /** kg/m³, on the same area. */
  readonly cubeLoading: number;
}

/** Where the plane should balance, behind the nose. */
export interface Target {
  readonly from: number;
  readonly to: number;
  readonly middle: number;
}

/** A plane as it balances now, beside where it should. */
export interface PlaneBalance extends Balanced, Pick<Centre, 'sure'> {
  readonly masses: PlaneMasses;
  /** Of the flight model, behind the wing's leading edge at the root. */
  readonly neutralPoint: number;
  /** The same by handbook: the wing as flown, the tail volume, and a check on the model. */
  readonly handbook: PlaneNeutralPoint;
  readonly target: Target;
  /** Which end is too heavy; neither within the target. */
  readonly heavy: 'nose' | 'tail' | 'neither';
  readonly wingAt: number;
}

/** The wing and where it stands: what turns a place behind the nose into a margin. */
export type Reference = Pick<PlaneBalance, 'neutralPoint' | 'handbook' | 'wingAt'>;

/** Refused as `planeNeutralPoint` and `neutralPointOf`. */
export function referenceOf(
  wing: GliderDesign['wing'], body: GliderDesign['body'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'], board: GliderDesign['board'],
): Outcome<Reference> {
  const handbook = planeNeutralPoint(wing, tail, arrangement, board);
  if (!handbook.ok) return handbook;
  const found = neutralPointOf(wing, body, tail, arrangement, board);
  return found.ok ? good({neutralPoint: found.value, handbook: handbook.value, wingAt: arrangement.wingAt}) : found;
}

/** A plane of some mass, balancing at some place behind the nose. */
export function balancedAt({neutralPoint, handbook, wingAt}: Reference, mass: number, at: number): Balanced {
  const behindWing = at - wingAt;
  const {area, meanAerodynamicChord} = handbook.wing;
  return {
    mass, at, behindWing, margin: (neutralPoint - behindWing) / meanAerodynamicChord,
    wingLoading: mass / area, cubeLoading: mass / area ** 1.5,
  };
}

/** Where a plane balances that has a static margin. */
export const placeOfMargin = ({neutralPoint, handbook, wingAt}: Reference, margin: number): number =>
  wingAt + neutralPoint - margin * handbook.wing.meanAerodynamicChord;

/** How far the flight model's neutral point lies behind the handbook's, in mean chords. */
export const modelBehindHandbook = ({neutralPoint, handbook}: Reference): number =>
  (neutralPoint - handbook.behindWing) / handbook.wing.meanAerodynamicChord;

/** The range of places that the wished-for static margins leave. */
export function targetOf(reference: Reference, {marginLow, marginHigh}: GliderDesign['balance']): Target {
  const from = placeOfMargin(reference, marginHigh), to = placeOfMargin(reference, marginLow);
  return {from, to, middle: (from + to) / 2};
}

const stage = memo((
  wing: GliderDesign['wing'], body: GliderDesign['body'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'],
  board: GliderDesign['board'], glue: GliderDesign['glue'], margins: GliderDesign['balance'], measured: GliderDesign['measured'],
  ballast: GliderDesign['ballast'],
): Outcome<PlaneBalance> => {
  const masses = planeMasses(wing, body, tail, arrangement, board, glue, measured, ballast);
  const reference = referenceOf(wing, body, tail, arrangement, board);
  if (!masses.ok) return masses;
  if (!reference.ok) return reference;
  const centre = centreOf(masses.value.items);
  if (!(centre.mass > 0)) return refused({code: 'plane-without-mass', path: 'board.arealMass'});
  const target = targetOf(reference.value, margins);
  return good({
    ...balancedAt(reference.value, centre.mass, centre.at), sure: centre.sure, masses: masses.value, ...reference.value, target,
    heavy: centre.at > target.to + touching ? 'tail' : centre.at < target.from - touching ? 'nose' : 'neither',
  });
});

/**
 * Where a plane balances and where it should: from the masses of its parts or as measured, and from the flight model's neutral point with the
 * static margins that the design asks for.
 *
 * Refused with the design's own clashes, 'plane-without-mass', and what the masses and the neutral points refuse.
 */
export function planeBalance(design: GliderDesign): Outcome<PlaneBalance> {
  const clashes = clashesOf(design);
  if (clashes.length > 0) return refused(...clashes);
  const {wing, body, tail, arrangement, board, glue, ballast, measured, balance} = asBuilt(design).design;
  return stage(wing, body, tail, arrangement, board, glue, balance, measured, ballast);
}
