import {clayDensity} from '../../../shared/materials.js';

/** Diameter of a ball of modelling clay of some mass, m: ∛(6 m / π ρ). */
export const clayBall = (mass: number): number => Math.cbrt(6 * mass / (Math.PI * clayDensity.usual));
