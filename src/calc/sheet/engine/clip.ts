import type {Point, Polygon} from '../../geometry/polygon/index.js';
import {opposite} from '../../geometry/polygon/segments.js';

/** The part of an outline where `inside`, which is linear, is not negative: I. E. Sutherland, G. W. Hodgman, Reentrant polygon clipping (1974). */
export const clipped = (outline: Polygon, inside: (point: Point) => number): Polygon => outline.flatMap((to, i) => {
  const from = outline.at(i - 1) ?? to;
  const a = inside(from), b = inside(to);
  const t = a / (a - b);
  const crossing = opposite(a, b) ? [{x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y)}] : [];
  return b < 0 ? crossing : [...crossing, to];
});

/** How far a point lies to the left of the way from one point to another, m. */
export const leftOf = (from: Point, to: Point) => ({x, y}: Point): number =>
  ((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) / (Math.hypot(to.x - from.x, to.y - from.y) || 1);
