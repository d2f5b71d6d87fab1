import {edgeBetween, type Flight} from './flight.js';
import {heavyOf} from './flying-plane.js';
import type {Glide} from './glide.js';
import {usualRanges} from './usual-ranges.js';

/** What a plane's numbers ask for: another speed, which tail or balance gives, or another balance. */
export type Call = 'slower' | 'faster' | 'forward' | 'back';

/** A range that is met to this is met. */
const exact = 1e-9;

/**
 * Whether a glide asks for another speed, by the usual speed and the usual speed over the stall: near the stall for more, whatever a hand throws. A sink or a glide
 * ratio out of the usual asks for none: it may want a lighter plane or thinner edges, and a plane has to glide steadily before it is set to glide its flattest.
 */
export function speedCall(stall: number, {speed}: Glide): 'slower' | 'faster' | undefined {
  const {speed: usual, stallMargin: over} = usualRanges;
  if (speed < over.from * stall - exact) return 'faster';
  return speed > Math.max(usual.to, over.from * stall) + exact || speed > over.to * stall + exact ? 'slower' : undefined;
}

/** What numbers out of their ranges ask for, by one rule for whoever remedies a plane: the static margin that is wanted, and {@link speedCall}. */
export function callsOf(flight: Flight): ReadonlySet<Call> {
  const {plane, trim, stall} = flight, heavy = heavyOf(plane);
  const code = trim.ok ? undefined : trim.problems[0]?.code;
  const speed = trim.ok ? speedCall(stall, trim.value.glide) : code === 'trim-dives' ? 'slower' : code === 'trim-stalls' ? 'faster' : undefined;
  return new Set<Call>([
    ...speed ? [speed] : [], ...heavy === 'tail' ? ['forward'] as const : [], ...heavy === 'nose' ? ['back'] as const : [],
  ]);
}

/** No hand sets a tail's edge finer than this, m. */
export const finestSlip = 2.5e-4;

/** By how much the tail's rear edge has to come up for the glide that is advised, m. */
export const riseToAdvised = ({plane, advised}: Flight): number => -edgeBetween(plane, plane.built, advised.setting);

/** For which speed a tail's rear edge is to be moved, and how far it has to come up, m; less than nothing is down. */
export interface TailCall {
  readonly speed: 'slower' | 'faster';
  readonly rise: number;
}

/**
 * What a plane whose glide asks for another speed wants of its tail: the advised glide's. Undefined where that lies the other way, or nearer than a hand sets it: so
 * heavy a plane flies fast near its stall already, and no tail makes it slower.
 */
export function tailCall(flight: Flight): TailCall | undefined {
  if (!flight.trim.ok) return undefined;
  const speed = speedCall(flight.stall, flight.trim.value.glide), rise = riseToAdvised(flight);
  return speed && (speed === 'slower' ? rise : -rise) >= finestSlip ? {speed, rise} : undefined;
}
