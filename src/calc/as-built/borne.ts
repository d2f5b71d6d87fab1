/** As near as a ruler could tell. */
const near = 1e-3;

/**
 * How much of a cause makes its effect just as large as it may be: false position (with the half weights of the Illinois rule), from none to where a small cause
 * in proportion would put it, or further.
 *
 * @param share of the effect that may be, with so much of the cause: about in proportion to it, Infinity where it cannot be followed
 * @param first in proportion; given back where the effect does not come up to what it may be
 */
export function justBorne(share: (amount: number) => number, first: number): number {
  /** A wild effect is no better a guide than a large one. */
  const beyond = (amount: number): number => Math.min(share(amount), 3) - 1;
  let low = 0, under = -1, high = first, over = beyond(first);
  for (let i = 0; i < 12 && over < 0; i++) {
    [low, under] = [high, over];
    high *= 1.2;
    over = beyond(high);
  }
  if (over < 0) return first;
  let before = 0;
  for (let i = 0; i < 30 && high - low > near * high; i++) {
    const at = (low * over - high * under) / (over - under), found = beyond(at);
    if (found < 0) {
      [low, under] = [at, found];
      if (before < 0) over /= 2;
    } else {
      [high, over] = [at, found];
      if (before > 0) under /= 2;
    }
    before = Math.sign(found);
    if (Math.abs(found) <= near) return at;
  }
  return low;
}
