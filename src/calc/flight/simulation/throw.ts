import {good, refused, type Outcome} from '../../problem.js';
import type {Airframe} from './airframe.js';
import {follow, type Rates} from './dormand-prince.js';
import {trackOf, type Track} from './track.js';

/** How a plane leaves the hand. SI units, angles in rad. */
export interface Throw {
  /** Of the balance point over the ground. */
  readonly height: number;
  /** Of the hand over the ground, and how steeply it moves upwards. */
  readonly speed: number;
  readonly angle: number;
  /** By how much the body's upper edge points above the way of the hand. */
  readonly attack: number;
  /** Steady and level, against the throw; less than nothing from behind. */
  readonly wind: number;
}

/** What a throw may be; beyond these it is a slip of the pen. */
export const throwLimits = {
  height: [0.01, 100], speed: [0.1, 40], angle: [-Math.PI / 2, Math.PI / 2], attack: [-Math.PI / 2, Math.PI / 2], wind: [-20, 20],
} as const satisfies Readonly<Record<keyof Throw, readonly [number, number]>>;

const pathOf = {height: 'launch.height', speed: 'launch.speed', angle: 'launch.angle', attack: 'launch.pitch', wind: 'launch.wind'} as const;
const kindOf = {height: 'length', speed: 'speed', angle: 'angle', attack: 'angle', wind: 'speed'} as const;

/** Of the state: along, up, speed along, speed up, pitch, its rate, what drag has taken. */
const scale = [1, 1, 1, 1, 1, 1, 0.1] as const;

export interface FlightOptions {
  /** Still in the air then, it is not followed any further, s. */
  readonly until?: number;
  readonly tolerance?: number;
}

/**
 * The flight of a plane from the hand to the ground, in its plane of symmetry: V̇ and γ̇ from lift, drag and weight, θ̈ from the moment. Followed in speeds along and
 * up, which stay smooth where a plane stands still in the air. Equations: R. F. Stengel, Flight Dynamics (2004), section 3.1, with the air's inertia as B. Etkin
 * and L. D. Reid have it (equation 4.9,18). A steady wind only carries the air along.
 *
 * Refused: 'throw-out-of-range' {least, most} at 'launch.height' and so on.
 */
export function fly(airframe: Airframe, thrown: Throw, {until = 60, tolerance = 1e-8}: FlightOptions = {}): Outcome<Track> {
  const wrong = (Object.keys(throwLimits) as (keyof Throw)[]).filter((name) => {
    const [least, most] = throwLimits[name];
    return !(thrown[name] >= least && thrown[name] <= most);
  });
  if (wrong.length > 0) {
    return refused(...wrong.map((name) => {
      const [least, most] = throwLimits[name];
      return {code: 'throw-out-of-range', path: pathOf[name], args: {kind: kindOf[name], least, most}};
    }));
  }
  const {height, speed, angle, attack, wind} = thrown;
  // the air is at rest: the ground moves under it
  const start = [0, height, speed * Math.cos(angle) + wind, speed * Math.sin(angle), angle + attack, 0, 0];
  return good(trackOf(follow(ratesOf(airframe, attack), start, {until, tolerance, scale, event: (state) => state[1] ?? 0}), airframe, wind));
}

const turn = 2 * Math.PI;
/** An angle brought to between −π and π. */
export const wrapped = (angle: number): number => angle - turn * Math.round(angle / turn);

function ratesOf(airframe: Airframe, held: number): Rates {
  const {mass, gravity, pitching} = airframe;
  return (state, rates) => {
    const along = state[2] as number, up = state[3] as number, pitch = state[4] as number, rate = state[5] as number;
    const speed = Math.sqrt(along * along + up * up);
    const cosine = speed > 0 ? along / speed : 1, sine = speed > 0 ? up / speed : 0;
    const angle = pitching ? wrapped(pitch - Math.atan2(up, along)) : held;
    const {lift, drag, moment} = airframe.loads(speed, angle, rate);
    let whole = lift, turning = 0;
    if (pitching) {
      // only speed across the boards moves air along
      const share = Math.cos(angle) ** 2, lagging = pitching.lagLift * share;
      const acrossRate = (speed * rate - lift / mass + gravity * cosine) / (1 + lagging / mass);
      whole += lagging * acrossRate;
      turning = (moment + pitching.lagMoment * share * acrossRate - pitching.crossFlow * rate * Math.abs(rate)) / pitching.inertia;
    }
    rates[0] = along;
    rates[1] = up;
    rates[2] = -(drag * cosine + whole * sine) / mass;
    rates[3] = (whole * cosine - drag * sine) / mass - gravity;
    // a plane that holds its angle of attack turns as its way does
    rates[4] = pitching ? rate : (lift / mass - gravity * cosine) / Math.max(speed, 1e-3);
    rates[5] = turning;
    rates[6] = drag * speed;
  };
}
