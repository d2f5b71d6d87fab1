/** A function of speed remembered at `count` speeds in equal ratios, and joined by cubics whose slopes run through; constant beyond both ends. */
export function smoothTable(at: (speed: number) => number, [from, to]: readonly [number, number], count = 40): (speed: number) => number {
  const step = Math.log(to / from) / (count - 1);
  const values = Float64Array.from({length: count}, (_, i) => at(from * Math.exp(i * step)));
  const value = (i: number): number => values[Math.min(Math.max(i, 0), count - 1)] ?? 0;
  const slope = (i: number): number => i <= 0 || i >= count - 1 ? 0 : (value(i + 1) - value(i - 1)) / 2;
  return (speed) => {
    const place = Math.min(Math.max(Math.log(Math.max(speed, from) / from) / step, 0), count - 1);
    const i = Math.min(Math.floor(place), count - 2), t = place - i, r = 1 - t;
    return r * r * ((1 + 2 * t) * value(i) + t * slope(i)) + t * t * ((1 + 2 * r) * value(i + 1) - r * slope(i + 1));
  };
}
