import type {Problem} from '../problem.js';
import type {QuantityKind} from '../units/kinds.js';
import type {Throw} from './log.js';

/** The numbers of a throw, and what no hand-launched glider's throw goes beyond. Common practice, no source. */
export const throwLimits = {
  distance: {kind: 'length', least: 0.05, most: 300},
  time: {kind: 'time', least: 0.05, most: 300},
  height: {kind: 'length', least: 0.1, most: 30},
} as const satisfies Readonly<Record<string, {readonly kind: QuantityKind; readonly least: number; readonly most: number}>>;

export type ThrowNumber = keyof typeof throwLimits;
export const throwNumbers = Object.keys(throwLimits) as readonly ThrowNumber[];

/** m/s: faster than any arm, and slower than anything flies. */
const fastest = 40;
const slowest = 0.2;

/** Mean speed along the straight line from the hand to the ground, m/s. */
export const meanSpeed = ({distance, time, height = 0}: Partial<Throw>): number | undefined =>
  (distance === undefined || time === undefined ? undefined : Math.hypot(distance, height) / time);

/** What is wrong with a throw, beside the number to blame: `throw-empty`, `throw-number-out-of-range`, `throw-too-fast`, `throw-too-slow` {speed}. */
export function checkThrow(one: Partial<Throw>): readonly Problem[] {
  const wrong: Problem[] = throwNumbers.flatMap((path): Problem[] => {
    const value = one[path];
    const {kind, least, most} = throwLimits[path];
    return value === undefined || (value >= least && value <= most) ? [] : [{code: 'throw-number-out-of-range', path, args: {least, most, kind}}];
  });
  if (wrong.length > 0) return wrong;
  if (one.distance === undefined && one.time === undefined) return [{code: 'throw-empty', path: 'distance'}];
  const speed = meanSpeed(one);
  if (speed !== undefined && speed > fastest) return [{code: 'throw-too-fast', path: 'time', args: {speed}}];
  return speed !== undefined && speed < slowest ? [{code: 'throw-too-slow', path: 'time', args: {speed}}] : [];
}
