import {level, power, type Comparison, type StudentT} from './comparison.js';

/** More throws of each than this are no plan for an afternoon. Common practice, no source. */
export const mostThrows = 40;
/** What a patient class throws of each. Common practice, no source. */
export const usualThrows = 12;

/** How far a version's throws scatter. */
export interface Scatters { readonly a: number; readonly b: number }

/** How many standard errors a difference has to be to show: t for the interval's level, and t again for how often it may not show. */
function errorsToShow(n: number, {a, b}: Scatters, t: StudentT): number {
  const freedom = (n - 1) * (a ** 2 + b ** 2) ** 2 / (a ** 4 + b ** 4);
  return t.quantile((1 + level) / 2, freedom) + t.quantile(power, freedom);
}

/** The smallest difference that so many throws of each show four times out of five. */
export const leastShown = (n: number, scatters: Scatters, t: StudentT): number =>
  errorsToShow(n, scatters, t) * Math.sqrt((scatters.a ** 2 + scatters.b ** 2) / n);

/** Far beyond any plan; it ends the search. */
const endless = 100_000;

/**
 * How many throws of each show a difference four times out of five: the least n with |d| ≥ (t₀.₉₇₅ + t₀.₈)·√((s₁² + s₂²)/n) (sample sizes for a
 * comparison of two means, NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.2, with the two-sample error). Undefined where no number does.
 */
export function throwsToShow(difference: number, scatters: Scatters, t: StudentT): number | undefined {
  const wanted = Math.abs(difference);
  if (!(wanted > 0) || !(scatters.a ** 2 + scatters.b ** 2 > 0) || !Number.isFinite(wanted)) return undefined;
  let low = 1, high = 2;
  while (leastShown(high, scatters, t) > wanted) {
    low = high;
    high *= 2;
    if (high > endless) return undefined;
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (leastShown(middle, scatters, t) > wanted) low = middle; else high = middle;
  }
  return high;
}

/** What would settle a comparison, were the difference what it looks now. */
export interface MoreThrows {
  readonly a: number;
  readonly b: number;
}

/** Undefined where it is settled, or where no number of throws that anybody makes would do. */
export function throwsToSettle({a, b, difference, settled}: Comparison, t: StudentT): MoreThrows | undefined {
  if (settled) return undefined;
  const each = throwsToShow(difference, {a: a.deviation ?? 0, b: b.deviation ?? 0}, t);
  if (each === undefined || each > Math.max(mostThrows, 2 * Math.max(a.n, b.n))) return undefined;
  // an unsettled comparison has not been thrown often enough, whatever the plan says
  const more = {a: Math.max(0, each - a.n), b: Math.max(0, each - b.n)};
  return more.a + more.b > 0 ? more : {a: 1, b: 1};
}
