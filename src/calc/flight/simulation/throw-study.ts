import type {Air} from '../../aero/air.js';
import {airOf} from '../air-of.js';
import {planeBalance, type PlaneBalance} from '../../balance/plane-balance.js';
import type {GliderDesign} from '../../design/design.js';
import {memo} from '../../memo.js';
import {good, refused, type Outcome, type Problem} from '../../problem.js';
import {tailCall, type TailCall} from '../calls.js';
import {flightOf, type Flight, type Trim} from '../flight.js';
import {flyingPlane, loadedWith, type FlyingPlane} from '../flying-plane.js';
import {glideAt, type Glide} from '../glide.js';
import {trimmedFor} from '../trimmed.js';
import {asGliding, rightThrow} from './as-gliding.js';
import {airframeOf} from './plane-airframe.js';
import {fly, type Throw} from './throw.js';
import {ballLands} from './thrown-ball.js';
import type {Track} from './track.js';
import type {TurnTrack} from './turning.js';

export {balanceFirst} from '../balance-first.js';

export type FlownId = 'own' | 'right' | 'slow' | 'fast' | 'up' | 'nose-heavy' | 'tail-heavy' | 'crooked';
export type Comparison = 'throws' | 'balances' | 'one';

/** One flight of a comparison. */
export interface Flown {
  readonly id: FlownId;
  readonly thrown: Throw;
  readonly track: Track;
  /** More at the nose than the plane has, kg; less than nothing is taken off it. */
  readonly noseMass?: number;
}

/** What the hand has to do, and how the plane flies when it does that and something else. SI. */
export interface ThrowStudy {
  readonly plane: FlyingPlane;
  readonly air: Air;
  /** The glide that it settles to, or why there is none: then it is thrown as for the glide it could have. */
  readonly trim: Outcome<Trim>;
  readonly glide: Glide;
  /** Which end is too heavy: then the throw `right` is only that of the glide as it is, and the balance comes first. */
  readonly heavy: PlaneBalance['heavy'];
  /** What is to be done to the tail first, where that glide asks for another speed. */
  readonly call: TailCall | undefined;
  /** The throw that the plane goes on from as it would glide. */
  readonly right: Throw;
  readonly own: Throw;
  /** Where a ball lands that is thrown level as fast as the hand should. */
  readonly ball: number;
  readonly flown: readonly Flown[];
  /** The reader's own throw with a crooked plane, which is among those flown too; or why it does not glide like that. */
  readonly turn?: Outcome<TurnTrack>;
}

/** How much slower and faster, and how much steeper, the other throws are. */
export const otherThrows = {slow: 0.65, fast: 1.6, up: 20 * Math.PI / 180} as const;

/** How far the balance is moved to show a heavy nose and a heavy tail, mean chords. */
const shifted = 0.08;
/** Longer than a lesson looks at; and steps as fine as a tape could measure, at the end of a flight to a millimetre. */
const shown = {until: 30, tolerance: 1e-6} as const;

type Stage = (plane: FlyingPlane, balance: Outcome<PlaneBalance>, flight: Outcome<Flight>, body: GliderDesign['body'], launch: GliderDesign['launch'], air: Air) => Outcome<ThrowStudy>;

const stageOf = (comparison: Comparison): Stage => memo((plane, balance, flight, body, launch, air) => {
  const trim = flight.ok ? flight.value.trim : flight;
  const glide = trim.ok ? trim.value.glide : flight.ok ? flight.value.advised : glideAt(plane, trimmedFor(plane, 0.5, plane.built), air);
  const {height, wind} = launch;
  if (!(glide.speed * Math.cos(glide.angle) > Math.abs(wind))) {
    return refused({code: 'wind-above-speed', path: 'launch.wind', args: {kind: 'speed', wind: Math.abs(wind), speed: glide.speed}});
  }
  const right = rightThrow(glide, {height, wind});
  const own: Throw = {
    height, wind, speed: launch.speed ?? right.speed, angle: launch.angle ?? right.angle, attack: right.attack + launch.pitch,
  };
  const flown: Flown[] = [], wrong: Problem[] = [];
  const add = (id: FlownId, thrown: Throw, noseMass?: number): void => {
    const loaded = noseMass === undefined ? plane : loadedWith(plane, noseMass, -plane.wingAt);
    const track = fly(airframeOf(loaded, body, air), thrown, shown);
    if (track.ok) flown.push({id, thrown, track: track.value, ...(noseMass !== undefined && {noseMass})});
    else wrong.push(...track.problems);
  };
  const isOwn = own.speed !== right.speed || own.angle !== right.angle || own.attack !== right.attack;
  const middle = (): void => { add(isOwn ? 'own' : 'right', own); };
  // without a glide there is no right throw to compare with
  switch (trim.ok || comparison === 'balances' ? comparison : 'one') {
    case 'one':
      middle();
      break;
    case 'throws': {
      add('slow', asGliding(glide, otherThrows.slow * glide.speed, 0, {height, wind}));
      add('right', right);
      add('fast', asGliding(glide, otherThrows.fast * glide.speed, 0, {height, wind}));
      add('up', asGliding(glide, glide.speed, otherThrows.up, {height, wind}));
      if (isOwn) add('own', own);
      break;
    }
    case 'balances': {
      const mass = noseMassFor(plane);
      add('nose-heavy', own, mass);
      middle();
      add('tail-heavy', own, -mass);
    }
  }
  return wrong.length > 0 ? refused(...wrong) : good({plane, air, trim, glide, heavy: balance.ok ? balance.value.heavy : 'neither', call: flight.ok ? tailCall(flight.value) : undefined, right, own, ball: ballLands(right.speed, height), flown});
});

const stages: Readonly<Record<Comparison, Stage>> = {throws: stageOf('throws'), balances: stageOf('balances'), one: stageOf('one')};

/**
 * A design thrown as its `launch` says, beside other throws or other balances. A plane that does not fly is thrown too, so that a class can see why.
 *
 * Refused: 'wind-above-speed' {wind, speed} where the wind carries the plane off, as {@link fly} for a throw that cannot be, and as {@link flyingPlane}.
 */
export function throwStudy(design: GliderDesign, comparison: Comparison, air: Air = airOf(design)): Outcome<ThrowStudy> {
  const plane = flyingPlane(design);
  if (!plane.ok) return plane;
  return stages[comparison](plane.value, planeBalance(design), flightOf(design, air), design.body, design.launch, air);
}

/** Whole grams at the nose that bring the balance forward by about {@link shifted}. */
function noseMassFor({mass, balance, wingAt, aero}: FlyingPlane): number {
  const by = shifted * aero.shape.wing.meanAerodynamicChord;
  return Math.max(Math.round(mass * by / (balance + wingAt - by) * 1e3), 1) / 1e3;
}
