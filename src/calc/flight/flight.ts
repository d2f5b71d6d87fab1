import type {Air} from '../aero/air.js';
import type {Setting} from '../aero/plane-loads.js';
import type {Range} from '../aero/range.js';
import {airOf} from './air-of.js';
import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import {flyingPlane, neutralPointBand, type FlyingPlane} from './flying-plane.js';
import {glideAt, type Glide} from './glide.js';
import {highest} from './highest.js';
import {sensitivitiesOf, type Sensitivities} from './sensitivities.js';
import {fastestThrow} from './throwable.js';
import {trimLine} from './trim-line.js';
import {liftOf, mostLift, trimmedAt} from './trimmed.js';

/** A stable plane in still air: what it can do with the tail set for it, and what it does as it is built. Speeds in m/s. */
export interface Flight {
  readonly plane: FlyingPlane;
  readonly air: Air;
  /** As built. */
  readonly trim: Outcome<Trim>;
  /** With the tail set for the flattest glide, and for the slowest sink. */
  readonly best: Glide;
  /**
   * The flattest glide that keeps a {@link reserve} of speed over the stall: what to set the tail for. The same object as `best` where that keeps it. Of a plane so
   * heavy that no hand throws it as fast, one that a hand can just reach.
   */
  readonly advised: Glide;
  readonly slowest: Glide;
  /** From fast to slow, the tail set for each. */
  readonly polar: readonly Glide[];
  /** The most lift the wing can be used with, and the speed of that. */
  readonly mostLift: Range;
  readonly stall: number;
}

/** The one glide that a plane settles to by itself. */
export interface Trim {
  readonly glide: Glide;
  /** What the neutral point's band makes of the speed: wide where the static margin is small. Throw at this speed, a little below level. */
  readonly speed: Range;
  /** Speed over the stall's. */
  readonly stallMargin: number;
  readonly sensitivities: Sensitivities;
}

/** Lift coefficients below this belong to dives. Common practice, no source. */
const leastLift = 0.08;

/**
 * Speed over the stall's that advice leaves a plane: the flattest glide of a board with square edges lies so near the stall that what the model does not
 * know, a bump or a slow throw would stall it. Common practice, no source; landing aeroplanes keep 1.3 (14 CFR 23.73, from memory).
 */
export const reserve = 1.2;

/**
 * How a design flies in some air, or why it does not: trim, glide, polar. Remembered for the same design and air.
 *
 * Refused: 'flight-unstable' {margin, forward} with how far forward the balance has to come for the least static margin wanted (which weight does that:
 * `weightsForBalance`), 'wing-without-lift' where no setting of the tail makes the wing carry, and as {@link flyingPlane}. Inside,
 * `trim` is refused with 'trim-dives' or 'trim-stalls' {edge}: by how much the tail's rear edge has to come up or down for the glide advised.
 */
export function flightOf(design: GliderDesign, air: Air = airOf(design)): Outcome<Flight> {
  const plane = flyingPlane(design);
  return plane.ok ? flightOfPlane(air, plane.value) : plane;
}

/** The same of a plane that is no design's, such as one with a weight where its body does not reach. */
export const flightOfPlane = memo((air: Air, plane: FlyingPlane): Outcome<Flight> => {
  if (!(plane.margin > 0)) return unstable(plane);
  const most = mostLift(plane);
  if (!(most.usual > leastLift && most.usual < Infinity)) return refused({code: 'wing-without-lift', path: 'wing.creases'});
  const line = trimLine(plane, air), range = [leastLift, most.usual] as const;
  const best = line.glide(highest((lift) => -line.usual(lift).angle, range));
  const slowest = line.glide(highest((lift) => -line.usual(lift).sink, range));
  const steps = 20;
  const polar = Array.from({length: steps + 1}, (_, i) => line.glide(leastLift + (most.usual - leastLift) * i / steps));
  const stall = line.glide(most.usual).speed;
  const spared = Math.max(most.usual / reserve ** 2, leastLift);
  const flattest = best.lift <= spared ? best : line.glide(spared);
  const advised = flattest.speed <= fastestThrow ? flattest : line.glide(Math.min(flattest.lift * (flattest.speed / throwable) ** 2, most.usual));
  return good({
    plane, air, best, advised, slowest, mostLift: most, stall, trim: trimOf(plane, air, advised, most, stall), polar,
  });
});

const unstable = ({margin, wanted: [least], aero}: FlyingPlane): ReturnType<typeof refused> =>
  refused({code: 'flight-unstable', path: 'ballast.masses', args: {margin, forward: (least - margin) * aero.shape.wing.meanAerodynamicChord}});

function trimOf(plane: FlyingPlane, air: Air, advised: Glide, most: Range, stall: number): Outcome<Trim> {
  const setting = trimmedAt(plane, plane.built);
  const lift = liftOf(plane, setting);
  const edge = edgeBetween(plane, plane.built, advised.setting);
  if (lift > most.usual) return refused({code: 'trim-stalls', path: 'arrangement.tailIncidence', args: {edge}});
  const glide = lift > 0 ? glideAt(plane, setting, air) : undefined;
  if (!glide || glide.speed > fastestThrow) return refused({code: 'trim-dives', path: 'arrangement.tailIncidence', args: {edge: -edge}});
  return good({
    glide, speed: speedRange(plane, glide, most), stallMargin: glide.speed / stall, sensitivities: sensitivitiesOf(plane, air, glide),
  });
}

/** By how much the tail's rear edge comes down from one setting to another, m. */
export const edgeBetween = ({tailChord}: FlyingPlane, from: Setting, to: Setting): number => tailChord * (Math.sin(to.tailIncidence) - Math.sin(from.tailIncidence));

/** The trimmed lift goes as one over the static margin, the speed as the root of the margin; no slower than the wing can fly. */
function speedRange({margin}: FlyingPlane, {speed, lift}: Glide, most: Range): Range {
  const at = (shift: number): number => speed * Math.sqrt(Math.max((margin + shift) / margin, lift / most.usual));
  return {least: at(-neutralPointBand), usual: speed, most: at(neutralPointBand)};
}

/** What a plane is advised that is too heavy to keep its {@link reserve} at any speed of a hand: just what a hand can reach, however near the stall. m/s. */
const throwable = 0.99 * fastestThrow;

/** A setting of the tail, and the glide with it. */
export interface TailSetting {
  readonly tailIncidence: number;
  /** By how much its rear edge has to come up from how it is built, m. */
  readonly rise: number;
  readonly glide: Glide;
}

/**
 * How the tail has to be set for a wanted speed.
 *
 * Refused: 'speed-below-stall' {speed, least}, and as {@link flightOf}.
 */
export function tailForSpeed(design: GliderDesign, wanted: number, air: Air = airOf(design)): Outcome<TailSetting> {
  const flight = flightOf(design, air);
  if (!flight.ok) return flight;
  const {plane, stall, mostLift: most} = flight.value;
  if (!(wanted >= stall)) return refused({code: 'speed-below-stall', args: {speed: wanted, least: stall, kind: 'speed'}});
  let lift = most.usual * (stall / wanted) ** 2;
  const line = trimLine(plane, air);
  let glide = line.glide(lift);
  // the cosine of the glide's angle hardly changes: each round leaves a thousandth of the miss before
  for (let round = 0; round < 4; round++) {
    lift *= (glide.speed / wanted) ** 2;
    glide = line.glide(lift);
  }
  return good({tailIncidence: glide.setting.tailIncidence, rise: -edgeBetween(plane, plane.built, glide.setting), glide});
}
