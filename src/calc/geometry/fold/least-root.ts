/** Steps of a degree and a half over a right angle: no bench condition turns twice within one. */
const steps = 60;

/**
 * Where `g`, watched from 0 to `end`, first comes up to `value`; without such a place, the most that `g` comes to.
 *
 * Walks in steps and halves the step in which it happens. Where no step ends high enough, walks again around the highest,
 * ever finer, so that a value just below a summit is not missed.
 */
export function leastRoot(g: (at: number) => number, value: number, end: number): {readonly at?: number; readonly most: number} {
  let most = -Infinity;
  for (let low = 0, high = end; high - low > 1e-9;) {
    const step = (high - low) / steps;
    let summit = low, before = low;
    for (let i = 0; i <= steps; i++) {
      const at = i < steps ? low + i * step : high, height = g(at);
      if (height >= value) return {at: bisected(g, value, before, at), most: height};
      if (height > most) [summit, most] = [at, height];
      before = at;
    }
    [low, high] = [Math.max(low, summit - step), Math.min(high, summit + step)];
  }
  return {most};
}

/** Halves [low, high] down to the last bit, to the first place found with g ≥ value. */
function bisected(g: (at: number) => number, value: number, low: number, high: number): number {
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return high;
    if (g(middle) >= value) high = middle; else low = middle;
  }
}
