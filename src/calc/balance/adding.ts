import {good, refused, type Outcome} from '../problem.js';

/** A mass balancing somewhere along a line. */
interface Along {
  readonly mass: number;
  readonly at: number;
}

/**
 * The mass that, added at `place`, brings the balance to `wanted`: m = M (x − X)/(X − w), moments about the wanted place X. Less
 * than nothing: so much has to come off there. Refused: 'weight-on-target' {place} where no mass there moves the balance.
 */
export function massToAdd({mass, at}: Along, wanted: number, place: number): Outcome<number> {
  const arm = wanted - place;
  if (Math.abs(arm) < 1e-9) return refused({code: 'weight-on-target', path: 'ballast.at', args: {place}});
  return good(mass * (at - wanted) / arm + 0);
}

/** Where a mass must go to bring the balance to `wanted`: the same equation solved for w. */
export const placeToAdd = ({mass, at}: Along, wanted: number, added: number): number => wanted - mass * (at - wanted) / added;

/** Two masses as one. */
export const together = (a: Along, b: Along): Along =>
  ({mass: a.mass + b.mass, at: (a.mass * a.at + b.mass * b.at) / (a.mass + b.mass)});
