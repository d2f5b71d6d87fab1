import type {StripLoad} from '../aero/plane-loads.js';
import type {Coefficients} from './derivatives.js';

/**
 * Whether a bank rolls out by itself: (C_lβ C_nr − C_nβ C_lr) cos γ − (C_lp C_nβ − C_lβ C_np) sin γ, more than 0 if so; γ the glide's angle
 * below level. The constant term of the characteristic equation: Etkin and Reid, Dynamics of Flight, section 6.8, with the path's angle kept.
 */
export function spiralCriterion({sideslip, rolling, yawing}: Pick<Coefficients, 'sideslip' | 'rolling' | 'yawing'>, glideAngle: number): number {
  return (sideslip.roll * yawing.yaw - sideslip.yaw * yawing.roll) * Math.cos(glideAngle)
    - (rolling.roll * sideslip.yaw - sideslip.roll * rolling.yaw) * Math.sin(glideAngle);
}

/**
 * The classic rule beside it: B = (l_v/b) (Γ/C_L), Γ here in degrees. About 5 is neutral, more rolls out. M. Drela, Basic Aircraft Design
 * Rules, MIT 16.01 (2006), after Blaine Rawdon.
 *
 * @param lever from the balance point back to the fin, over the span
 * @param dihedral rad
 */
export const spiralRule = (lever: number, dihedral: number, lift: number): number => lever * (dihedral * 180 / Math.PI) / lift;

/** ∫ Γ c y dy / ∫ c y dy over the wing, rad: each strip counted as it counts in rolling. */
export function equivalentDihedral(strips: readonly StripLoad[]): number {
  let whole = 0, turned = 0;
  for (const {group, chord, along, width, dy, dz} of strips) {
    if (group !== 0) continue;
    whole += chord * along * width;
    turned += chord * along * width * Math.atan2(dz, dy);
  }
  return turned / whole;
}
