import type {Problem} from '../../problem.js';
import {problem} from './lengths.js';

/**
 * A whole fold shared among creases, in rad: each takes its share until its groove is shut, and what it cannot take goes
 * to the others. Less than the whole comes back when all are shut.
 *
 * @param shares how much each takes, in any unit; equal when left out
 * @param stops the fold at which each crease's groove is shut; without one, never
 */
export function shareFold(total: number, creases: number, shares?: readonly number[], stops: readonly (number | undefined)[] = []): number[] {
  const folds: number[] = Array.from({length: creases}, () => 0);
  const share = (i: number): number => (shares ? shares[i] ?? 0 : 1);
  let open = [...folds.keys()].filter(share);
  while (open.length) {
    const each = (total - sum(folds)) / sum(open.map(share));
    const fits = (i: number): boolean => each * share(i) <= (stops[i] ?? Infinity);
    const free = open.filter(fits);
    const settled = free.length < open.length ? open.filter((i) => !fits(i)) : open;
    for (const i of settled) folds[i] = Math.min(each * share(i), stops[i] ?? Infinity);
    open = free.length < open.length ? free : [];
  }
  return folds;
}

export const sum = (list: readonly number[]): number => list.reduce((total, each) => total + each, 0);

/** Why panels cannot be folded so: `crease-missing`; `shares-unusable` unless there is one for each crease, none below 0, and some above. */
export function creaseProblems(creases: number, shares?: readonly number[]): Problem[] {
  if (creases < 1) return [problem('crease-missing', {})];
  const sound = !shares || (shares.length === creases && shares.every((share) => share >= 0 && share < 1e6) && sum(shares) > 1e-6);
  return sound ? [] : [problem('shares-unusable', {creases})];
}
