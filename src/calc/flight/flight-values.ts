import type {DerivedValue} from '../derived-value.js';
import type {GliderDesign} from '../design/design.js';
import {good, type Outcome} from '../problem.js';
import type {QuantityKind} from '../units/kinds.js';
import {finVolume} from './fin-volume.js';
import {flightOf, type Flight, type Trim} from './flight.js';
import {flyingPlane, type FlyingPlane} from './flying-plane.js';

const mapped = <T, R>(outcome: Outcome<T>, pick: (value: T) => R): Outcome<R> => outcome.ok ? good(pick(outcome.value)) : outcome;

/** An estimate of the flight model; without a number where the plane would not fly like that. */
const estimate = (kind: QuantityKind, of: DerivedValue['of'], digits?: number): DerivedValue => ({kind, about: true, ...(digits !== undefined && {digits}), of});

const ofPlane = (kind: QuantityKind, pick: (plane: FlyingPlane) => number, digits?: number): DerivedValue =>
  estimate(kind, (design) => mapped(flyingPlane(design), pick), digits);

const ofFlight = (kind: QuantityKind, pick: (flight: Flight) => number, digits?: number): DerivedValue =>
  estimate(kind, (design) => mapped(flightOf(design), pick), digits);

const trimOf = (design: GliderDesign): Outcome<Trim> => {
  const flight = flightOf(design);
  return flight.ok ? flight.value.trim : flight;
};

const ofTrim = (kind: QuantityKind, pick: (trim: Trim) => number, digits?: number): DerivedValue =>
  estimate(kind, (design) => mapped(trimOf(design), pick), digits);

/** How a plane flies: as it is built, at its best, and how steadily. How it swings is in `motion-values.ts`. */
export const flightValues: Readonly<Record<string, DerivedValue>> = {
  speed: ofTrim('speed', ({glide}) => glide.speed),
  /** A plane is thrown as fast as it flies. */
  throwSpeed: ofTrim('speed', ({glide}) => glide.speed),
  glideRatio: ofTrim('count', ({glide}) => glide.ratio.usual, 0),
  sink: ofTrim('speed', ({glide}) => glide.sink.usual),
  reynolds: ofTrim('count', ({glide}) => Math.round(glide.reynolds / 1000) * 1000),
  stallMargin: ofTrim('ratio', ({stallMargin}) => stallMargin, 0),
  stallSpeed: ofFlight('speed', ({stall}) => stall),
  bestSpeed: ofFlight('speed', ({best}) => best.speed),
  bestGlideRatio: ofFlight('count', ({best}) => best.ratio.usual, 0),
  leastSink: ofFlight('speed', ({slowest}) => slowest.sink.usual),
  staticMargin: ofPlane('ratio', ({margin}) => margin, 0),
  /** Behind the wing's leading edge at the root. */
  neutralPoint: ofPlane('length', ({neutralPoint}) => neutralPoint, 0),
  finVolume: {...estimate('count', (design) => mapped(flyingPlane(design), (plane) => finVolume(plane, design)), 3), about: false},
};
