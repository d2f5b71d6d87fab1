/** Of some numbers: how many, their mean, how far they scatter about it (the sample standard deviation), the least and the most. */
export interface Spread {
  readonly n: number;
  readonly mean: number;
  /** Needs two numbers. */
  readonly deviation: number | undefined;
  readonly least: number;
  readonly most: number;
}

/** Undefined for no numbers. Sums of squares are taken about the mean, so that far-off numbers lose no digits. */
export function spreadOf(values: readonly number[]): Spread | undefined {
  const n = values.length;
  if (n === 0) return undefined;
  let sum = 0, least = Infinity, most = -Infinity;
  for (const value of values) {
    sum += value;
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  // a mean that rounding pushed outside its own numbers is none
  const mean = Math.min(Math.max(sum / n, least), most);
  const squares = values.reduce((total, value) => total + (value - mean) ** 2, 0);
  return {n, mean, least, most, deviation: n > 1 ? Math.sqrt(squares / (n - 1)) : undefined};
}

/** The scatter common to several groups, each about its own mean; undefined before three throws beyond the means are there to tell it. */
export function commonScatter(spreads: readonly (Spread | undefined)[]): number | undefined {
  let squares = 0, freedom = 0;
  for (const spread of spreads) {
    if (spread?.deviation === undefined) continue;
    squares += (spread.n - 1) * spread.deviation ** 2;
    freedom += spread.n - 1;
  }
  return freedom < 3 ? undefined : Math.sqrt(squares / freedom);
}
