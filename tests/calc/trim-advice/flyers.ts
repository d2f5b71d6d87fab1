import fc from 'fast-check';
import {usualAir} from '../../../src/calc/aero/air.js';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {flightOf, tailForSpeed} from '../../../src/calc/flight/flight.js';
import {flyingPlane} from '../../../src/calc/flight/flying-plane.js';
import {airframeOf} from '../../../src/calc/flight/simulation/plane-airframe.js';
import {throwStudy} from '../../../src/calc/flight/simulation/throw-study.js';
import {fly, type Throw} from '../../../src/calc/flight/simulation/throw.js';
import type {Track} from '../../../src/calc/flight/simulation/track.js';
import {adviceFor, type Advice} from '../../../src/calc/trim-advice/advice.js';
import type {CauseId} from '../../../src/calc/trim-advice/causes.js';
import type {Change} from '../../../src/calc/trim-advice/change.js';
import type {Past, Seen} from '../../../src/calc/trim-advice/seen.js';
import {planeOf, valueOf} from '../flight/planes.js';

/** A shape, the share of its chord by which it is stable, and its speed over the stall's. */
export interface Drawn {
  readonly span: number; readonly chord: number; readonly stack: number; readonly bent: number; readonly tailChord: number; readonly tailAt: number;
  readonly margin: number; readonly speed: number;
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({min, max, noNaN: true});

/** Gliders that somebody could have cut, trimmed between a little over the stall and half as fast again. */
export const anyFlyer: fc.Arbitrary<Drawn> = fc.record({
  span: between(0.62, 0.9), chord: between(0.1, 0.14), stack: between(0.006, 0.012), bent: between(6, 18), tailChord: between(0.07, 0.095), tailAt: between(0.5, 0.58),
  margin: between(0.2, 0.26), speed: between(1.2, 1.45),
});

/** Long, with much dihedral: a heavy right tip banks it right and takes it right, while its nose swings left. */
export const slipping: Drawn = {span: 0.883, chord: 0.1277, stack: 0.00963, bent: 18, tailChord: 0.0762, tailAt: 0.5, margin: 0.2284, speed: 1.381};

/** The least and the most static margin wanted of every flyer. */
export const wantedMargins = [0.1, 0.35] as const;

/** A plane with 20 g in its nose, balanced and its tail set as drawn. */
export function flyer({span, chord, stack, bent, tailChord, tailAt, margin, speed}: Drawn): GliderDesign {
  const shape = withValues(defaultDesign, {
    'wing.span': span, 'wing.chord': chord, 'wing.creases': [{at: 0.4 * chord}], 'wing.stack': stack, 'wing.joints': [{angle: bent * Math.PI / 180, at: 0.3 * span}],
    'tail.chord': tailChord, 'arrangement.tailAt': tailAt, 'body.length': 0.68, 'ballast.masses': [{mass: 0.02, at: 0.015}],
    'balance.marginLow': wantedMargins[0], 'balance.marginHigh': wantedMargins[1], 'measured.mass': 0.05, 'measured.balance': 0.05,
  });
  const {neutralPoint, aero, wingAt} = planeOf(shape);
  const wanted = neutralPoint - margin * aero.shape.wing.meanAerodynamicChord;
  const balanced = withValues(shape, {'measured.balance': (wanted * 0.07 - 0.02 * (0.015 - wingAt)) / 0.05});
  const set = valueOf(tailForSpeed(balanced, speed * valueOf(flightOf(balanced)).stall));
  return withValues(balanced, {'arrangement.tailIncidence': set.tailIncidence});
}

export const rightThrow = (design: GliderDesign): Throw => valueOf(throwStudy(design, 'one')).right;

export const flown = (design: GliderDesign, thrown: Throw): Track =>
  valueOf(fly(airframeOf(planeOf(design), design.body, usualAir), thrown, {until: 30, tolerance: 1e-7}));

export const marginOf = (design: GliderDesign): number => valueOf(flyingPlane(design)).margin;

export const advised = (design: GliderDesign, seen: Seen, history: readonly Past[] = []): Advice => valueOf(adviceFor(design, seen, history));

/** What is advised against one cause. */
export function changesFor(design: GliderDesign, seen: Seen, cause: CauseId): readonly Change[] {
  const found = advised(design, seen).causes.find(({id}) => id === cause);
  if (!found) throw new Error(`${cause} is not named`);
  return found.changes;
}

/** How far a flight rises over the straight line of a glide from the same hand, m. */
export function risen({moments}: Track, {angle, height: hand}: Throw): number {
  return Math.max(...moments.map(({x, height}) => height - hand - x * Math.tan(angle)));
}
