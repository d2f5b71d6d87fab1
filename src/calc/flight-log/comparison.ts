import {good, refused, type Outcome} from '../problem.js';
import {spreadOf, type Spread} from './spread.js';

/** Student's t distribution: it comes from a statistics library, and this room takes no packages, so it is handed in. */
export interface StudentT {
  /** The value that t stays below with a probability. */
  quantile(probability: number, freedom: number): number;
}

/** How often an interval may miss the truth, and how often a plan may fail. */
export const level = 0.95;
export const power = 0.8;

export interface Interval { readonly from: number; readonly to: number }

/** Two versions by one measure: the second less the first. */
export interface Comparison {
  readonly a: Spread;
  readonly b: Spread;
  readonly difference: number;
  /** In nineteen of twenty such trials it holds the true difference. */
  readonly interval: Interval;
  readonly standardError: number;
  readonly freedom: number;
  /** Whether the interval leaves out "no difference". */
  readonly settled: boolean;
}

/**
 * Where the true mean lies, in nineteen of twenty such trials: mean ± t·s/√n, with n − 1 degrees of freedom (NIST/SEMATECH e-Handbook of Statistical
 * Methods, 1.3.5.2). Refused: `too-few-throws` {least}.
 */
export function meanInterval({n, mean, deviation}: Spread, t: StudentT): Outcome<Interval> {
  if (deviation === undefined) return refused({code: 'too-few-throws', args: {least: 2}});
  const half = t.quantile((1 + level) / 2, n - 1) * deviation / Math.sqrt(n);
  return good({from: mean - half, to: mean + half});
}

/**
 * Compares two samples that may scatter unlike: Welch's interval, with the degrees of freedom of Welch and Satterthwaite (B. L. Welch, Biometrika 34,
 * 1947). Refused: `too-few-throws` {least}; `throws-all-alike` where neither sample scatters at all, so that it was measured too coarsely.
 */
export function compare(first: readonly number[], second: readonly number[], t: StudentT): Outcome<Comparison> {
  const a = spreadOf(first), b = spreadOf(second);
  if (a?.deviation === undefined || b?.deviation === undefined) return refused({code: 'too-few-throws', args: {least: 2}});
  const ofA = a.deviation ** 2 / a.n, ofB = b.deviation ** 2 / b.n;
  const standardError = Math.sqrt(ofA + ofB);
  if (!(standardError > 0)) return refused({code: 'throws-all-alike'});
  const shareA = ofA / (ofA + ofB), shareB = ofB / (ofA + ofB);
  const freedom = 1 / (shareA ** 2 / (a.n - 1) + shareB ** 2 / (b.n - 1));
  const half = t.quantile((1 + level) / 2, freedom) * standardError;
  const difference = b.mean - a.mean;
  const interval = {from: difference - half, to: difference + half};
  return good({a, b, difference, interval, standardError, freedom, settled: interval.from > 0 || interval.to < 0});
}
