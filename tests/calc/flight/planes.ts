import {flightOf, type Flight, type Trim} from '../../../src/calc/flight/flight.js';
import {flyingPlane, type FlyingPlane} from '../../../src/calc/flight/flying-plane.js';
import {tailForSpeed} from '../../../src/calc/flight/flight.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../src/calc/design/design.js';
import type {Outcome} from '../../../src/calc/problem.js';

export function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

export const codesOf = (outcome: Outcome<unknown>): string[] => (outcome.ok ? [] : outcome.problems.map(({code}) => code));

export const planeOf = (design: GliderDesign): FlyingPlane => valueOf(flyingPlane(design));
export const flight = (design: GliderDesign): Flight => valueOf(flightOf(design));
export const trim = (design: GliderDesign): Trim => valueOf(flight(design).trim);

/** The design balanced at a static margin, as if it had been measured so, and weighing 90 g. */
export function balancedWith(margin: number, design: GliderDesign = defaultDesign, mass = 0.09): GliderDesign {
  const weighed = withValues(design, {'measured.mass': mass, 'measured.balance': 0.03});
  const {neutralPoint, aero} = planeOf(weighed);
  return withValues(weighed, {'measured.balance': neutralPoint - margin * aero.shape.wing.meanAerodynamicChord});
}

/** A plane that flies: balanced, and its tail set for a speed. */
export function trimmedAt(speed: number, design: GliderDesign = balancedWith(0.2)): GliderDesign {
  return withValues(design, {'arrangement.tailIncidence': valueOf(tailForSpeed(design, speed)).tailIncidence});
}
