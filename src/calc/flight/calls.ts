import type {Flight} from './flight.js';
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
  const {plane: {margin, wanted: [least, most]}, trim, stall} = flight;
  const code = trim.ok ? undefined : trim.problems[0]?.code;
  const speed = trim.ok ? speedCall(stall, trim.value.glide) : code === 'trim-dives' ? 'slower' : code === 'trim-stalls' ? 'faster' : undefined;
  return new Set<Call>([
    ...speed ? [speed] : [], ...margin < least - exact ? ['forward'] as const : [], ...margin > most + exact ? ['back'] as const : [],
  ]);
}
