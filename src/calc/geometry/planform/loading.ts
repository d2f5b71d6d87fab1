import {good, refused, type Outcome} from '../../problem.js';

/** Mass over wing area, kg/m². Refused: 'mass-negative', 'area-not-positive'. */
export const wingLoading = (mass: number, area: number): Outcome<number> => loading(mass, area, 1);

/**
 * Mass over wing area to the power 3/2, kg/m³: a loading that stays the same when a plane is built larger or smaller,
 * so that planes of any size can be compared. F. Reynolds, Model Builder, September 1989 (from memory).
 * Refused: 'mass-negative', 'area-not-positive'.
 */
export const wingCubeLoading = (mass: number, area: number): Outcome<number> => loading(mass, area, 1.5);

function loading(mass: number, area: number, power: number): Outcome<number> {
  if (!(mass >= 0 && mass < Infinity)) return refused({code: 'mass-negative', args: {mass}});
  if (!(area > 0 && area < Infinity)) return refused({code: 'area-not-positive', args: {area}});
  return good(mass / area ** power);
}
