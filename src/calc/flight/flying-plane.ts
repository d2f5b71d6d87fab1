import {parasiteOf, type Parasite} from '../aero/parasite.js';
import {planeAero, type PlaneAero} from '../aero/plane-aero.js';
import type {PerCause, Setting} from '../aero/plane-loads.js';
import {asBuilt} from '../as-built/as-built.js';
import {centreOf, type Sure} from '../balance/mass-item.js';
import {planeMasses, type PlaneMasses} from '../balance/masses.js';
import type {PlaneBalance} from '../balance/plane-balance.js';
import {touching} from '../balance/touching.js';
import {clashesOf} from '../design/clashes.js';
import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import {tooHeavy} from './throwable.js';

/** How far the neutral point may be out, in mean chords: what the air of the wing's wake and the thin boards at low speed leave open. */
export const neutralPointBand = 0.04;

/** A plane with its masses, before anyone has trimmed it. Places in m behind the wing's leading edge at the root. */
export interface FlyingPlane {
  readonly aero: PlaneAero;
  readonly parasite: Parasite;
  readonly masses: PlaneMasses;
  readonly mass: number;
  readonly sure: Sure;
  /** Where it balances. */
  readonly balance: number;
  /** Where more lift has no moment, the body counted. */
  readonly neutralPoint: number;
  /** Static margin: how far the balance lies ahead of the neutral point, in mean chords. */
  readonly margin: number;
  /** Lift, and moment about the balance point, cause by cause; the body counted. */
  readonly lift: PerCause;
  readonly moment: PerCause;
  /** The angles that the design gives; the angle of attack is still open. */
  readonly built: Setting;
  /** The static margins that the builder wants, at least and at most. */
  readonly wanted: readonly [number, number];
  readonly wingAt: number;
  readonly tailChord: number;
}

const stage = memo((
  wing: GliderDesign['wing'], body: GliderDesign['body'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'],
  board: GliderDesign['board'], glue: GliderDesign['glue'], margins: GliderDesign['balance'], measured: GliderDesign['measured'],
  ballast: GliderDesign['ballast'],
): Outcome<FlyingPlane> => {
  const solved = planeAero(wing, tail, arrangement, board);
  if (!solved.ok) return solved;
  const aero = solved.value;
  const parasite = parasiteOf(aero.shape, wing, body, tail, arrangement, board);
  if (!parasite.ok) return parasite;
  const masses = planeMasses(wing, body, tail, arrangement, board, glue, measured, ballast);
  if (!masses.ok) return masses;
  const centre = centreOf(masses.value.items);
  if (!(centre.mass > 0)) return refused({code: 'plane-without-mass', path: 'board.arealMass'});
  const heavy = tooHeavy(centre.mass, masses.value.items, aero.shape.wing.area, aero.camber, {measured, board});
  if (heavy) return refused(heavy);
  const {wingAt, wingIncidence, tailIncidence} = arrangement;
  return good(balancedAt({
    aero, parasite: parasite.value, masses: masses.value, sure: centre.sure, wingAt, tailChord: tail.chord,
    wanted: [margins.marginLow, margins.marginHigh], built: {attack: 0, wingIncidence, tailIncidence, fold: 0},
  }, centre.mass, centre.at - wingAt));
});

/**
 * A design as a plane that can fly or not: its loads in the air, its masses, and where its balance lies to its neutral point. An unstable plane is
 * given too.
 *
 * Refused: with the design's own clashes, 'plane-without-mass', as {@link tooHeavy}, and what surfaces and masses refuse.
 */
export function flyingPlane(design: GliderDesign): Outcome<FlyingPlane> {
  const clashes = clashesOf(design);
  if (clashes.length > 0) return refused(...clashes);
  const {wing, body, tail, arrangement, board, glue, ballast, measured, balance} = asBuilt(design).design;
  return stage(wing, body, tail, arrangement, board, glue, balance, measured, ballast);
}

/** Everything about a plane that moving its balance does not change. */
type Unbalanced = Omit<FlyingPlane, 'mass' | 'balance' | 'neutralPoint' | 'margin' | 'lift' | 'moment'>;

/** A plane of some mass that balances at some place. */
export function balancedAt(plane: Unbalanced, mass: number, balance: number): FlyingPlane {
  const {aero, parasite: {body, area}, wingAt} = plane;
  const {meanAerodynamicChord: chord} = aero.shape.wing;
  const nose = body.noseLift / area;
  const lift = aero.lift.map((each, k) => each + (k === 0 ? nose : 0));
  // the body's lift sits at the nose
  const about = aero.moment.map((each, k) => each + (k === 0 ? nose * (aero.x + wingAt) / chord : 0));
  const moment = about.map((each, k) => each + (lift[k] ?? 0) * (balance - aero.x) / chord);
  const margin = -(moment[0] ?? 0) / (lift[0] ?? 1);
  return {...plane, mass, balance, lift, moment, margin, neutralPoint: balance + margin * chord};
}

/** Which end is too heavy for the static margins wanted, by the rule of `planeBalance`: a place this near the edge of its target is within it. */
export function heavyOf({margin, wanted: [least, most], aero}: FlyingPlane): PlaneBalance['heavy'] {
  const near = touching / aero.shape.wing.meanAerodynamicChord;
  return margin < least - near ? 'tail' : margin > most + near ? 'nose' : 'neither';
}

/** The same plane with a mass fitted `at` behind the wing's leading edge. */
export const loadedWith = (plane: FlyingPlane, mass: number, at: number): FlyingPlane =>
  balancedAt(plane, plane.mass + mass, (plane.mass * plane.balance + mass * at) / (plane.mass + mass));

/** The same with that mass among its items, for what asks where its masses lie. */
export function fittedWith(plane: FlyingPlane, mass: number, at: number): FlyingPlane {
  const {items} = plane.masses;
  return {...loadedWith(plane, mass, at), masses: {...plane.masses, items: [...items, {id: 'weight', mass, at: plane.wingAt + at, sure: 'weighed', onWing: true}]}};
}
