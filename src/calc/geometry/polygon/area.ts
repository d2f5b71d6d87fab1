import {eachEdge, type Polygon} from './point.js';

/**
 * Area in m²: positive when the corners run counter-clockwise, negative when clockwise, 0 for fewer than three.
 *
 * The shoelace formula, about the first corner so that an outline far from the origin loses no digits.
 */
export function signedArea(polygon: Polygon): number {
  const origin = polygon[0];
  if (!origin) return 0;
  let twice = 0;
  eachEdge(polygon, (a, b) => {
    twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
  });
  return twice / 2;
}

/** The same outline with its corners counter-clockwise. */
export const counterClockwise = (polygon: Polygon): Polygon =>
  signedArea(polygon) < 0 ? [...polygon].reverse() : polygon;
