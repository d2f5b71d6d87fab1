import type {Air} from '../../aero/air.js';
import {airOf} from '../air-of.js';
import type {GliderDesign} from '../../design/design.js';
import {good, type Outcome} from '../../problem.js';
import {lateralMatrix} from '../motion-equations.js';
import type {Airframe} from './airframe.js';
import {stateAt} from './between-steps.js';
import {crookedPlane, straight, type Crooked, type CrookedPlane} from './crooked.js';
import {follow, type Step} from './dormand-prince.js';
import {airframeOf} from './plane-airframe.js';
import type {Throw} from './throw.js';
import {highestOf, type Moment, type Track} from './track.js';
import {AT_BANK, AT_HEIGHT, AT_PITCH, turningRates, turningScale} from './turning-rates.js';

export type {Crooked} from './crooked.js';

/** A turning plane at one moment. SI; right turns and right wing down are positive; `x` is along the throw, `pitch` and `attack` are of the body's upper edge. */
export interface TurnPoint extends Moment {
  /** Over the ground, to the right of the throw. */
  readonly y: number;
  readonly heading: number;
  readonly bank: number;
}

export interface TurnTrack extends Track {
  readonly moments: readonly TurnPoint[];
  /** The same. */
  readonly points: readonly TurnPoint[];
  readonly last: TurnPoint;
  readonly at: (time: number) => TurnPoint;
  /** Of the circle through the air that it flies in the last half second (third of a shorter flight), m: less than 0 to the left, Infinity straight on. */
  readonly radius: number;
  /** At the end, rad. */
  readonly bank: number;
  /** Whether the circle is still getting smaller then: by more than a tenth from the half second before. */
  readonly tightening: boolean;
  /** 'tight': banked or pitched further than the model follows a plane. */
  readonly ends: 'landed' | 'tight' | 'time';
}

export interface TurnOptions {
  /** Of the hand, m: left out, the design's. */
  readonly height?: number;
  readonly seconds?: number;
  /** Steady and level, against the throw, m/s: left out, the design's. */
  readonly wind?: number;
  /** How it leaves the hand, instead: its height and wind count then. */
  readonly thrown?: Throw;
  readonly air?: Air;
  readonly tolerance?: number;
}

/** Further over than this, a plane is not followed: loads to the side are no longer straight. */
export const tightest = {bank: 75 * Math.PI / 180, pitch: 75 * Math.PI / 180} as const;

/**
 * Track over the ground and bank of a plane released straight in its trimmed glide, or thrown straight in another way, until it lands, `seconds` pass, or it is
 * banked or pitched beyond {@link tightest}. Speed and sink follow from the motion: a banked wing carries less of the weight, so the plane drops its nose and flies faster.
 *
 * Not modelled: loads to the side that are not straight (a stalled tip, a fin beyond its stall), their change with the angle of attack within the flight, gusts, the ground's
 * nearness, boards that bend.
 *
 * Refused: 'crooked-out-of-range', and where there is no glide as `flightOf`.
 */
export function turnTrack(design: GliderDesign, crooked: Partial<Crooked>, options: TurnOptions = {}): Outcome<TurnTrack> {
  const {air = airOf(design), height = design.launch.height, wind = design.launch.wind, seconds = 30, tolerance = 1e-6} = options;
  const made = crookedPlane(design, {...straight, ...crooked}, air);
  if (!made.ok) return made;
  const {glide, plane} = made.value;
  const gliding: Released = {height, wind, speed: glide.speed, angle: -glide.angle, attack: glide.setting.attack};
  return good(followTurn(made.value, airframeOf(plane, design.body, air), options.thrown ? throughAir(options.thrown) : gliding, {seconds, tolerance}));
}

/** How a plane leaves the hand, as {@link Throw}, but speed and angle as seen from the air. */
export type Released = Throw;

function throughAir({height, wind, speed, angle, attack}: Throw): Released {
  const along = speed * Math.cos(angle) + wind, up = speed * Math.sin(angle), way = Math.atan2(up, along);
  return {height, wind, speed: Math.hypot(along, up), angle: way, attack: angle + attack - way};
}

/** The turn of a plane with what pushes it aside: see {@link turnTrack}. */
export function followTurn(made: CrookedPlane, airframe: Airframe, {height, wind, speed, angle, attack}: Released, {seconds, tolerance}: {readonly seconds: number; readonly tolerance: number}): TurnTrack {
  const more = attack - made.glide.setting.attack;
  const start = [0, 0, height, speed * Math.cos(more), 0, speed * Math.sin(more), 0, 0, 0, 0, angle + more, 0, 0];
  const way = follow(turningRates(made, airframe), start, {
    until: seconds, tolerance, scale: turningScale,
    event: (state) => Math.min(state[AT_HEIGHT] ?? 0, tightest.bank - Math.abs(state[AT_BANK] ?? 0), tightest.pitch - Math.abs(state[AT_PITCH] ?? 0)),
  });
  return trackOf(way.steps, way.ended === 'time', made, airframe, wind);
}

const endings = {landed: 'landed', time: 'still-flying', tight: 'given-up'} as const satisfies Record<TurnTrack['ends'], Track['ended']>;

function trackOf(steps: readonly Step[], inTime: boolean, {glide, plane: {mass}}: CrookedPlane, {gravity}: Airframe, wind: number): TurnTrack {
  const point = ({time, state}: Pick<Step, 'time' | 'state'>): TurnPoint => {
    const [x = 0, y = 0, height = 0, u = 0, v = 0, w = 0, , rate = 0, , bank = 0, pitch = 0, heading = 0, taken = 0] = state;
    const speed = Math.hypot(u, v, w), own = glide.setting.attack;
    const rising = u * Math.sin(pitch) - (v * Math.sin(bank) + w * Math.cos(bank)) * Math.cos(pitch);
    return {
      time, x: x - wind * time, y, height, heading, bank, speed, angle: Math.asin(Math.min(Math.max(rising / speed, -1), 1)) || 0, pitch: pitch + own, rate,
      attack: own + Math.atan2(w, u), energy: mass * (speed * speed / 2 + gravity * height), taken,
    };
  };
  const at = (time: number): TurnPoint => point(stateAt(steps, time));
  const points = steps.map(point);
  const last = at(Infinity);
  const window = Math.min(0.5, last.time / 3);
  const radius = radiusBetween(at(last.time - window), last), before = radiusBetween(at(last.time - 2 * window), at(last.time - window));
  const ends = last.height < 1e-6 ? 'landed' : inTime ? 'time' : 'tight';
  return {
    moments: points, points, last, highest: highestOf(points, at), at, radius, bank: last.bank, tightening: Math.abs(radius) < 0.9 * Math.abs(before),
    ends, ended: endings[ends],
  };
}

/** Of the circle flown through the air between two moments. */
function radiusBetween(from: TurnPoint, to: TurnPoint): number {
  const turned = to.heading - from.heading, sunk = from.height - to.height, way = (from.speed + to.speed) / 2 * (to.time - from.time);
  return turned === 0 ? Infinity : Math.sqrt(Math.max(way * way - sunk * sunk, 0)) / turned;
}

/** What a turn comes to after some time, for each unit of its cause; small causes, so doubled by twice as much. */
export interface TurnEffect {
  /** rad, rad/s and rad for each rad, or for each kg. */
  readonly bank: number;
  readonly rate: number;
  readonly heading: number;
}

export interface TurnSensitivities {
  /** When: s after the release. */
  readonly seconds: number;
  readonly speed: number;
  readonly per: Readonly<Record<keyof Crooked, TurnEffect>>;
}

/**
 * The steady or growing turn that small crookedness comes to until the plane lands: of the equations of small motions to the side, spiral included. A radius is
 * speed over rate.
 *
 * Refused where there is no glide, as `flightOf`.
 *
 * @param seconds left out, as long as a glide from the design's hand height takes
 */
export function turnSensitivities(design: GliderDesign, seconds?: number, air: Air = airOf(design)): Outcome<TurnSensitivities> {
  const made = crookedPlane(design, straight, air);
  if (!made.ok) return made;
  const {glide} = made.value;
  const until = seconds ?? design.launch.height / glide.sink.usual;
  const effect = (cause: keyof Crooked): Outcome<TurnEffect> => {
    const small = cause === 'tipMass' ? 1e-6 : 1e-3;
    const one = crookedPlane(design, {...straight, [cause]: small}, air);
    if (!one.ok) return one;
    const {bank, rate, heading} = smallTurn(one.value, until);
    return good({bank: bank / small, rate: rate / small, heading: heading / small});
  };
  const fin = effect('fin'), tipMass = effect('tipMass'), twist = effect('twist');
  if (!fin.ok) return fin;
  if (!tipMass.ok) return tipMass;
  if (!twist.ok) return twist;
  return good({seconds: until, speed: glide.speed, per: {fin: fin.value, tipMass: tipMass.value, twist: twist.value}});
}

/** The turn after a time by the equations of small motions. */
export function smallTurn({lateral, steady, boards, aside, heavy, glide, plane}: CrookedPlane, seconds: number): TurnEffect {
  const matrix = lateralMatrix(lateral, steady);
  const {xzOverRoll, xzOverYaw} = lateral, both = 1 / (1 - xzOverRoll * xzOverYaw);
  const weight = plane.mass * steady.gravity;
  const l = boards.roll + weight * Math.cos(glide.angle) * aside / heavy.roll, n = boards.yaw - weight * Math.sin(glide.angle) * aside / heavy.yaw;
  const push = [boards.side, both * (l + xzOverRoll * n), both * (n + xzOverYaw * l), 0];
  const size = Math.max(...push.map(Math.abs));
  const {steps} = follow((state, rates) => {
    for (let i = 0; i < 4; i++) rates[i] = (matrix[i] ?? []).reduce((sum, each, j) => sum + each * (state[j] ?? 0), (push[i] ?? 0) / size);
    rates[4] = (state[2] ?? 0) / Math.cos(steady.pathAngle);
  }, [0, 0, 0, 0, 0], {until: seconds, tolerance: 1e-8, scale: [1, 1, 1, 1, 1], event: () => 1});
  const [, , r = 0, bank = 0, heading = 0] = steps.at(-1)?.state ?? [];
  return size > 0 ? {bank: bank * size, rate: r * size / Math.cos(steady.pathAngle), heading: heading * size} : {bank: 0, rate: 0, heading: 0};
}
