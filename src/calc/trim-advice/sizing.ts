import type {GliderDesign} from '../design/design.js';
import {speedCall} from '../flight/calls.js';
import {tailForSpeed, type Flight} from '../flight/flight.js';
import {usualRanges} from '../flight/usual-ranges.js';
import type {Change} from './change.js';
import {leavesUsual, leversFor, tellable, type Way} from './levers.js';
import type {Fit} from './suspects.js';

/** A step at the bench changes the speed by so much where nothing measured says how much it takes. Common practice, no source. */
export const usualStep = 0.9;
const stepLimits = [0.8, 0.95] as const;

/** A step that went too far. */
export interface Overshoot {
  readonly halvings: number;
  /** The speed that it left over the one before; missing where it changed none of the plane's numbers. */
  readonly made?: number;
}

/** By how much a step changes the speed: what the likeliest fault has made of it where throws were measured, else a usual step; half of the last one where that went too far. */
function stepOf(way: Way, fit: Fit | undefined, {halvings, made}: Overshoot): number {
  if (made !== undefined) return Math.exp(-Math.abs(Math.log(made)) / 2);
  const {speedRatio, measures} = fit ?? {};
  const found = measures === 'fit' && speedRatio !== undefined ? (way === 'slower' ? 1 / speedRatio : speedRatio) : usualStep;
  return Math.min(Math.max(found, stepLimits[0]), stepLimits[1]) ** (1 / 2 ** halvings);
}

/** Changes of balance or tail towards slower or faster; none where they would take the plane out of its usual ranges, or would change its speed by less than anyone tells apart. */
export function leversTowards(way: Way, design: GliderDesign, flight: Flight, fit: Fit | undefined, overshoot: Overshoot): readonly Change[] {
  const {trim} = flight;
  if (!trim.ok) return [];
  const {speed} = trim.value.glide, step = stepOf(way, fit, overshoot);
  const wanted = way === 'slower' ? slower(speed, step, usualRanges.stallMargin.from * flight.stall) : faster(design, flight, speed, step);
  if (Math.abs(Math.log(wanted / speed)) < tellable) return [];
  return leversFor(design, flight, wanted, way, (after) => leavesUsual(flight, after, way));
}

/** A step slower, no nearer to the stall than usual; where there is no room for two, half of the way, which leaves some. */
function slower(speed: number, step: number, least: number): number {
  if (least >= speed) return speed;
  const half = Math.sqrt(speed * least);
  return speed * step * step >= least ? speed * step : Math.log(speed / half) >= tellable ? Math.max(half, speed * step) : Math.max(least, speed * step);
}

/** A step faster, or what of it is usual. */
function faster(design: GliderDesign, flight: Flight, speed: number, step: number): number {
  const usual = (wanted: number): boolean => {
    const set = tailForSpeed(design, wanted);
    return set.ok && speedCall(flight.stall, set.value.glide) !== 'slower';
  };
  if (usual(speed / step)) return speed / step;
  let [low, high] = [speed, speed / step];
  for (let i = 0; i < 8; i++) {
    const middle = (low + high) / 2;
    if (usual(middle)) low = middle; else high = middle;
  }
  return low;
}
