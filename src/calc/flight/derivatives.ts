import {gravity, type Air} from '../aero/air.js';
import {amountsOf, causes, total, type PerCause} from '../aero/plane-loads.js';
import {lostSuction, usualBoardDrag} from '../aero/section/board-drag.js';
import {totalSide, type SideForce} from '../aero/side-loads.js';
import type {FlyingPlane} from './flying-plane.js';
import type {Glide} from './glide.js';
import type {Inertia} from './inertia.js';
import type {LateralDerivatives, LongitudinalDerivatives, SteadyFlight} from './motion-equations.js';

/** Coefficients by radian, by q c̄/2V, by p b/2V and r b/2V, about the balance point. */
export interface Coefficients {
  readonly liftSlope: number;
  readonly momentSlope: number;
  readonly dragSlope: number;
  readonly pitching: {readonly lift: number; readonly moment: number};
  /** By α̇ c̄/2V: the tail meets the downwash that left the wing a little earlier. */
  readonly lag: {readonly lift: number; readonly moment: number};
  readonly sideslip: SideForce;
  readonly rolling: SideForce;
  readonly yawing: SideForce;
}

const attack = causes.indexOf('attack'), tail = causes.indexOf('tailIncidence');

/**
 * The derivatives of a plane in a glide, moved from the wing's quarter chord to the balance point: turning about one point is turning
 * about another and a wind from below or from the side. Body: its nose as a slender wing. The drag of the slower half in yaw: −4 c_d ∫ y² c dy / S b².
 */
export function coefficientsOf(plane: FlyingPlane, {setting, speed}: Glide, {z}: Inertia, air: Air): Coefficients {
  const {aero, parasite, wingAt, balance, lift, moment} = plane;
  const {meanAerodynamicChord: c, span: b} = aero.shape.wing;
  const amounts = amountsOf(setting);
  const d = (balance - aero.x) / c, along = (balance - aero.x) / b, up = z / b;
  const at = (list: PerCause, k: number): number => list[k] ?? 0;
  const downwashed = at(aero.lift, tail) * aero.downwash * 2 * aero.shape.arm / c;
  const pitchingMoment = aero.pitching.moment + d * aero.pitching.lift;
  const noseSide = -parasite.body.noseSide / parasite.area, noseYaw = noseSide * (wingAt + aero.x) / b;
  const bare = totalSide(aero.side.sideslip, amounts), rolling = totalSide(aero.side.rolling, amounts), yawing = totalSide(aero.side.yawing, amounts);
  const ahead: SideForce = {force: bare.force + noseSide, roll: bare.roll, yaw: bare.yaw + noseYaw};
  const toBalance = ({force, roll, yaw}: SideForce): SideForce => ({force, roll: roll - up * force, yaw: yaw + along * force});
  const withWind = (turning: SideForce, times: number): SideForce =>
    ({force: turning.force + times * ahead.force, roll: turning.roll + times * ahead.roll, yaw: turning.yaw + times * ahead.yaw});
  const [wing] = parasite.boards;
  const wingDrag = wing ? usualBoardDrag(wing.board, speed * wing.board.chord / air.kinematicViscosity) : 0;
  const yawed = toBalance(withWind(yawing, 2 * along));
  return {
    liftSlope: at(lift, attack), momentSlope: at(moment, attack),
    dragSlope: slopeOfPairs(aero.induced, amounts) + lostSuction.usual * slopeOfPairs(aero.suction, amounts),
    pitching: {lift: aero.pitching.lift - 2 * d * at(aero.lift, attack), moment: pitchingMoment - 2 * d * (at(aero.moment, attack) + d * at(aero.lift, attack))},
    lag: {lift: downwashed, moment: downwashed * (at(aero.moment, tail) / at(aero.lift, tail) + d)},
    sideslip: toBalance(ahead), rolling: toBalance(withWind(rolling, -2 * up)),
    yawing: {...yawed, yaw: yawed.yaw - 4 * wingDrag * aero.spread},
  };
}

const slopeOfPairs = (pairs: readonly PerCause[], amounts: PerCause): number =>
  total(pairs[attack] ?? [], amounts) + total(pairs.map((row) => row[attack] ?? 0), amounts);

/** The air that moves with the boards, as mass and inertia: π ρ c²/4 for each metre of a board that moves square to itself. M. Munk (1924). */
export interface CarriedAir {
  readonly up: number;
  readonly side: number;
  readonly roll: number;
  readonly pitch: number;
  readonly yaw: number;
}

export function carriedAir({aero, balance}: FlyingPlane, z: number, density: number): CarriedAir {
  let up = 0, side = 0, roll = 0, pitch = 0, yaw = 0;
  for (const s of aero.strips) {
    const mass = 2 * s.share * Math.PI / 4 * density * s.chord ** 2 * s.width;
    const ny = -s.dz / s.width, nz = s.dy / s.width, x = s.x + s.chord / 4 - balance;
    up += mass * nz * nz;
    side += mass * ny * ny;
    roll += mass * (s.y * nz - (s.z - z) * ny) ** 2;
    pitch += mass * (nz * x) ** 2;
    yaw += mass * (ny * x) ** 2;
  }
  return {up, side, roll, pitch, yaw};
}

/** The derivatives over mass and inertia that the equations of motion want, with the air that moves along. */
export function dimensional(plane: FlyingPlane, glide: Glide, inertia: Inertia, coefficients: Coefficients, air: Air): {
  readonly longitudinal: LongitudinalDerivatives; readonly lateral: LateralDerivatives; readonly steady: SteadyFlight;
} {
  const {mass, parasite: {area}, aero} = plane;
  const {meanAerodynamicChord: c, span: b} = aero.shape.wing;
  const {speed, lift, drag: {usual: drag}, angle} = glide;
  const carried = carriedAir(plane, inertia.z, air.density);
  const k = coefficients;
  const q = air.density * speed * area / 2, force = q / mass;
  const turn = q * c / (inertia.pitch + carried.pitch);
  const side = q / (mass + carried.side), rolls = q * b / (inertia.roll + carried.roll), yaws = q * b / (inertia.yaw + carried.yaw);
  // x backwards and z up on the bench are both turned round in the air, so the product of inertia keeps its sign
  const {xz} = inertia;
  return {
    steady: {speed, pathAngle: -angle, gravity},
    longitudinal: {
      xu: -2 * force * drag, xw: force * (lift - k.dragSlope), zu: -2 * force * lift, zw: -force * (k.liftSlope + drag),
      zwDot: -(carried.up + q * c / 2 / speed * k.lag.lift) / mass, zq: -force * c / 2 * k.pitching.lift,
      mu: 0, mw: turn * k.momentSlope, mwDot: turn * c / 2 / speed * k.lag.moment, mq: turn * c / 2 * k.pitching.moment,
    },
    lateral: {
      yv: side * k.sideslip.force, yp: side * b / 2 * k.rolling.force, yr: side * b / 2 * k.yawing.force,
      lv: rolls * k.sideslip.roll, lp: rolls * b / 2 * k.rolling.roll, lr: rolls * b / 2 * k.yawing.roll,
      nv: yaws * k.sideslip.yaw, np: yaws * b / 2 * k.rolling.yaw, nr: yaws * b / 2 * k.yawing.yaw,
      xzOverRoll: xz / (inertia.roll + carried.roll), xzOverYaw: xz / (inertia.yaw + carried.yaw),
    },
  };
}
