import type {GliderDesign} from '../../design/design.js';
import {planformOf, sweepOf, tailVolume, type Planform} from '../../geometry/planform/index.js';
import {memo} from '../../memo.js';
import {tailStations} from '../../parts/stations.js';
import {good, refused, type Outcome} from '../../problem.js';
import {downwashFactors, downwashGradient, type DownwashFactors} from './downwash.js';
import {endPlatedAspectRatio} from './end-plates.js';
import {liftSlope} from './lift-slope.js';
import {neutralPoint, wholeSlope} from './neutral-point.js';
import {flownWing, type FlownWing} from './flown-wing.js';

/** The tail flies in air that the wing has slowed: 0.9, as handbooks take it for a tail level with the wing (from memory). */
export const tailEfficiency = 0.9;

/** How far the handbook formulas may be out, in mean chords, the body being left out among other things. */
export const neutralPointBand = 0.04;

/**
 * How far the flight model's neutral point may lie from the handbook's, in mean chords, without a doubt: of likely planes with tail volumes up to 0.7 it
 * was found -5.3 to +1.2 % behind for 729 drawn at random, and -6.2 to +2.2 % at the 976 corners of what is likely.
 */
export const usuallyApart = 0.065;

/** A plane's neutral point with all that led to it. Lengths in m, slopes per radian. */
export interface PlaneNeutralPoint {
  readonly wing: FlownWing;
  readonly tail: Planform;
  readonly wingSlope: number;
  /** The aspect ratio the tail acts with, its end plates counted. */
  readonly tailAspectRatio: number;
  readonly tailSlope: number;
  readonly downwash: number;
  readonly downwashFactors: DownwashFactors;
  readonly slope: number;
  /** From the wing's aerodynamic centre to the tail's. */
  readonly arm: number;
  readonly tailVolume: number;
  /** In mean chords behind the front edge of the mean chord. */
  readonly share: number;
  /** Behind the wing's leading edge at the root. */
  readonly behindWing: number;
}

/**
 * The neutral point by handbook: lift slopes of wing and tail, twin fins counted as the tail's end plates, downwash, tail
 * volume. The body is left out. Refused: 'no-tail-arm' {arm} where the tail is not behind the wing, and with what the
 * planforms or the dihedral refuse.
 */
export const planeNeutralPoint = memo((
  wing: GliderDesign['wing'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'], board: GliderDesign['board'],
): Outcome<PlaneNeutralPoint> => {
  const flown = flownWing(wing, board);
  if (!flown.ok) return flown;
  const stations = tailStations(tail);
  const plan = planformOf(stations);
  if (!plan.ok) return plan;
  const halfChordSweep = sweepOf(stations, 0.5);
  if (!halfChordSweep.ok) return halfChordSweep;

  const {value: w} = flown, {value: t} = plan;
  const arm = arrangement.tailAt + t.quarterChordBack - arrangement.wingAt - w.quarterChordBack;
  if (arm <= 0) return refused({code: 'no-tail-arm', path: 'arrangement.tailAt', args: {arm}});
  const {count, height} = tail.fins;
  const tailAspectRatio = count === 2 ? endPlatedAspectRatio(t.aspectRatio, height / t.span) : t.aspectRatio;
  const wingSlope = liftSlope(w.aspectRatio, w.halfChordSweep);
  const tailSlope = liftSlope(tailAspectRatio, halfChordSweep.value);
  const behind = {aspectRatio: w.aspectRatio, taper: w.taper, quarterChordSweep: w.quarterChordSweep, armOverSpan: arm / w.span};
  const downwash = downwashGradient(behind);
  const slope = wholeSlope(wingSlope, tailSlope, t.area / w.area, downwash, tailEfficiency);
  const volume = tailVolume({tailArea: t.area, arm, wingArea: w.area, wingLength: w.meanAerodynamicChord});
  const share = neutralPoint({wingCentre: 0.25, tailVolume: volume, tailEfficiency, tailSlope, slope, downwash});
  return good({
    wing: w, tail: t, wingSlope, tailAspectRatio, tailSlope, downwash, downwashFactors: downwashFactors(behind), slope, arm, tailVolume: volume, share,
    behindWing: w.meanAerodynamicChordBack + share * w.meanAerodynamicChord,
  });
});
