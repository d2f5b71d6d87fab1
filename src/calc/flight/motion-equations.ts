import {gravity as standardGravity} from '../aero/air.js';
import type {Matrix} from './eigenvalues.js';

/** Derivatives over mass and inertia, in the usual letters: force along, force down, nose-up moment. SI. */
export interface LongitudinalDerivatives {
  readonly xu: number;
  readonly xw: number;
  readonly zu: number;
  readonly zw: number;
  readonly zwDot: number;
  readonly zq: number;
  readonly mu: number;
  readonly mw: number;
  readonly mwDot: number;
  readonly mq: number;
}

/** Steady flight that motions start from. */
export interface SteadyFlight {
  readonly speed: number;
  /** rad, upwards positive: a glide's is less than 0. */
  readonly pathAngle: number;
  readonly gravity: number;
}

/**
 * The equations of small motions in the plane of symmetry, for the state (u, w, q, θ) in stability axes. B. Etkin and L. D. Reid, Dynamics of Flight,
 * third edition, equation 4.9,18; R. C. Nelson, Flight Stability and Automatic Control, section 4.
 */
export function longitudinalMatrix(d: LongitudinalDerivatives, {speed, pathAngle, gravity}: SteadyFlight): Matrix {
  const z = 1 / (1 - d.zwDot), fall = gravity * Math.sin(pathAngle);
  const down = [d.zu * z, d.zw * z, (speed + d.zq) * z, -fall * z] as const;
  return [
    [d.xu, d.xw, 0, -gravity * Math.cos(pathAngle)],
    [...down],
    [d.mu + d.mwDot * down[0], d.mw + d.mwDot * down[1], d.mq + d.mwDot * down[2], d.mwDot * down[3]],
    [0, 0, 1, 0],
  ];
}

/** Side force over mass, and moments over the inertia about their own axes, for sideslip speed v and rates p and r. SI. */
export interface LateralDerivatives {
  readonly yv: number;
  readonly yp: number;
  readonly yr: number;
  readonly lv: number;
  readonly lp: number;
  readonly lr: number;
  readonly nv: number;
  readonly np: number;
  readonly nr: number;
  /** The product of inertia I_xz (x forwards, z down) over the inertia in roll, and over that in yaw. */
  readonly xzOverRoll: number;
  readonly xzOverYaw: number;
}

/** The equations of small motions to the side, for the state (v, p, r, φ). Etkin and Reid, equation 4.9,19. */
export function lateralMatrix(d: LateralDerivatives, {speed, pathAngle, gravity}: SteadyFlight): Matrix {
  const both = 1 / (1 - d.xzOverRoll * d.xzOverYaw);
  const roll = (l: number, n: number): number => both * (l + d.xzOverRoll * n), yaw = (l: number, n: number): number => both * (n + d.xzOverYaw * l);
  return [
    [d.yv, d.yp, d.yr - speed, gravity * Math.cos(pathAngle)],
    [roll(d.lv, d.nv), roll(d.lp, d.np), roll(d.lr, d.nr), 0],
    [yaw(d.lv, d.nv), yaw(d.lp, d.np), yaw(d.lr, d.nr), 0],
    [0, 1, Math.tan(pathAngle), 0],
  ];
}

/**
 * Period in s of the slow swing of a plane that keeps its angle of attack: π √2 V/g. F. W. Lanchester, Aerodonetics (1908). A light plane with a
 * small static margin swings more slowly, by about the root of its manoeuvre margin over its static margin: the tail's damping lets the angle change.
 */
export const phugoidPeriod = (speed: number): number => Math.PI * Math.SQRT2 * speed / standardGravity;
