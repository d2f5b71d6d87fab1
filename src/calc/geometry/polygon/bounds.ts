import type {Polygon} from './point.js';

/** The upright rectangle that just holds an outline: its lower left corner and its two sides, in metres. */
export interface Bounds {
  readonly x: number;
  readonly y: number;
  /** Along x. */
  readonly length: number;
  /** Along y. */
  readonly width: number;
}

/** The bounds of an outline; without corners, a rectangle of no size at the origin. */
export function bounds(polygon: Polygon): Bounds {
  if (!polygon.length) return {x: 0, y: 0, length: 0, width: 0};
  let left = Infinity, low = Infinity, right = -Infinity, high = -Infinity;
  for (const {x, y} of polygon) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return {x: left, y: low, length: right - left, width: high - low};
}
