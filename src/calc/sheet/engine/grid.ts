/** Lengths as whole numbers of one small length, so that sums of them are exact. */
export interface Grid {
  readonly of: (metres: number) => number;
  readonly metres: (cells: number) => number;
}

/** Lengths nearer to each other than one over this are the same. */
const perMetre = 1e9;

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b));

/** The coarsest grid on which all the lengths given, in m, lie to the nanometre. */
export function gridFor(lengths: readonly number[]): Grid {
  const cell = lengths.reduce((common, length) => greatestCommon(common, Math.round(length * perMetre)), 0) || 1;
  return {of: (metres) => Math.round(metres * perMetre / cell), metres: (cells) => cells * cell / perMetre};
}
