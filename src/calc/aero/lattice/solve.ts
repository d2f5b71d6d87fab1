import {good, type Outcome} from '../../problem.js';
import {influenceOf} from './influence.js';
import {layPanels, type Lattice} from './lay-panels.js';
import {factorise, type Solver} from './linear.js';
import type {Surface} from './surface.js';

/** A lattice whose equations have been taken apart: each further state of flight costs one substitution. */
export interface SolvedLattice {
  readonly lattice: Lattice;
  /**
   * The circulation of each panel over the speed of flight, m, from the air's normal velocity at each control point over that speed: alike on both
   * halves, or opposite.
   */
  readonly symmetric: Solver;
  readonly antisymmetric: Solver;
}

/**
 * The vortex lattice over surfaces that are mirrored in the plane y = 0. In flat potential flow with a straight wake; small angles.
 * J. Katz and A. Plotkin, Low-Speed Aerodynamics, chapter 12. Refused: 'equations-singular' for surfaces that lie in one another.
 */
export function solveLattice(surfaces: readonly Surface[]): Outcome<SolvedLattice> {
  const lattice = layPanels(surfaces);
  const {symmetric, antisymmetric} = influenceOf(lattice);
  const even = factorise(symmetric, lattice.count), odd = factorise(antisymmetric, lattice.count);
  if (!even.ok) return even;
  if (!odd.ok) return odd;
  return good({lattice, symmetric: against(even.value), antisymmetric: against(odd.value)});
}

/** The vortices undo the normal velocity that they are given. */
const against = (solve: Solver): Solver => (wind) => solve(Float64Array.from(wind, (w) => -w));
