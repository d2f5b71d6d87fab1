import {rangeOf, type Range} from '../aero/range.js';
import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {finVolume, tailVolume} from './fin-volume.js';
import {flightOf, type Flight, type Trim} from './flight.js';
import {balanceFirst, type BalanceFirst} from './balance-first.js';
import {flyingPlane, heavyOf, neutralPointBand, type FlyingPlane} from './flying-plane.js';
import {motionOf, type Motion} from './motion.js';
import {usualRanges, type MeasureId, type UsualRange} from './usual-ranges.js';
import {wingStrength, type WingStrength} from './wing-strength.js';

/** One number of a plane beside its usual range. */
export interface Measure extends UsualRange {
  readonly id: MeasureId;
  /** What it is and how far it may be out; the three are the same where it follows from the dimensions alone. */
  readonly value: Range;
  readonly standing: 'below' | 'within' | 'above';
}

/** All that can be said about how a plane flies; without a glide where it has none. */
export interface FlightCheck {
  readonly design: GliderDesign;
  readonly plane: FlyingPlane;
  /** What is to be put right before anything else. */
  readonly first: BalanceFirst | undefined;
  readonly flight: Outcome<Flight>;
  readonly trim: Outcome<Trim>;
  readonly motion: Outcome<Motion>;
  readonly strength: Outcome<WingStrength>;
  /** The same with the wing's upper skin peeled off where it is whole, and whole where it is peeled. */
  readonly otherwise: Outcome<WingStrength>;
  readonly measures: readonly Measure[];
}

/** How far estimates of the flight may be out at the least, as shares of themselves. */
export const speedBand = 0.1, sinkBand = 0.25;

/**
 * A design's numbers beside their usual ranges, and its glide, motion and strength. A plane that cannot glide as it is has an answer too: `flight` or
 * `trim` then say why, and what would mend it.
 *
 * Refused as {@link flyingPlane}.
 */
export const flightCheck = memo((design: GliderDesign): Outcome<FlightCheck> => {
  const flying = flyingPlane(design);
  if (!flying.ok) return flying;
  const plane = flying.value;
  const flight = flightOf(design);
  const trim = flight.ok ? flight.value.trim : flight;
  const motion = motionOf(design);
  return good({
    design, plane, first: balanceFirst(design), flight, trim, motion, strength: wingStrength(design),
    otherwise: wingStrength({...design, wing: otherSkin(design.wing)}),
    measures: [...ofPlane(plane, design), ...trim.ok ? ofTrim(trim.value, motion) : []],
  });
});

/** One object for each wing, so that moving a weight folds neither of the two again. */
const otherSkin = memo((wing: GliderDesign['wing']): GliderDesign['wing'] => Object.freeze({...wing, peeled: wing.peeled === 'none' ? 'above' : 'none'}));

function ofPlane(plane: FlyingPlane, design: GliderDesign): Measure[] {
  const {mass, balance, neutralPoint, margin, wanted: [least, most], aero: {shape: {wing}}} = plane;
  const chord = wing.meanAerodynamicChord;
  const heavy = heavyOf(plane);
  const steady = {from: least, to: most, source: 'wanted'} as const;
  return [
    measure('mass', exactly(mass), usualRanges.mass),
    measure('wingLoading', exactly(mass / wing.area), usualRanges.wingLoading),
    measure('cubeLoading', exactly(mass / wing.area ** 1.5), usualRanges.cubeLoading),
    measure('balance', exactly(balance), {kind: 'length', from: neutralPoint - most * chord, to: neutralPoint - least * chord, source: 'wanted'}, placed[heavy]),
    measure('staticMargin', {least: margin - neutralPointBand, usual: margin, most: margin + neutralPointBand}, {kind: 'ratio', ...steady}, steadied[heavy]),
    measure('tailVolume', exactly(tailVolume(plane)), usualRanges.tailVolume),
    measure('finVolume', exactly(finVolume(plane, design)), usualRanges.finVolume),
  ];
}

function ofTrim({glide, speed, stallMargin}: Trim, motion: Outcome<Motion>): Measure[] {
  const faster = glide.speed;
  return [
    ...motion.ok ? [measure('roll', exactly(motion.value.spiralRule), usualRanges.roll)] : [],
    measure('speed', widened(speed, speedBand), usualRanges.speed),
    measure('stallMargin', rangeOf((end) => stallMargin * widened(speed, speedBand)[end] / faster), usualRanges.stallMargin),
    measure('glideRatio', glide.ratio, usualRanges.glideRatio),
    measure('sink', widened(glide.sink, sinkBand), usualRanges.sink),
    measure('reynolds', exactly(glide.reynolds), usualRanges.reynolds),
  ];
}

const exactly = (value: number): Range => ({least: value, usual: value, most: value});

/** A range that is nowhere narrower than a share of its usual figure either way. */
const widened = ({least, usual, most}: Range, share: number): Range =>
  ({least: Math.min(least, usual * (1 - share)), usual, most: Math.max(most, usual * (1 + share))});

const standingOf = ({usual}: Range, {from, to}: UsualRange): Measure['standing'] => usual < from ? 'below' : usual > to ? 'above' : 'within';

const measure = (id: MeasureId, value: Range, range: UsualRange, standing = standingOf(value, range)): Measure => ({id, value, ...range, standing});

/** How the place of a balance and its static margin stand where an end is too heavy. */
const placed = {tail: 'above', nose: 'below', neither: 'within'} as const, steadied = {tail: 'below', nose: 'above', neither: 'within'} as const;
