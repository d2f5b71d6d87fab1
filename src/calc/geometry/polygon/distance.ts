import {pointInPolygon} from './inside.js';
import {eachEdge, type Polygon} from './point.js';
import {distanceToSegment, segmentsMeet} from './segments.js';

/** The gap between two outlines in metres: 0 when they touch, overlap or one lies in the other. */
export function polygonDistance(a: Polygon, b: Polygon): number {
  const [a0] = a, [b0] = b;
  if (!a0 || !b0) return Infinity;
  if (pointInPolygon(a0, b) !== 'outside' || pointInPolygon(b0, a) !== 'outside') return 0;
  let least = Infinity;
  eachEdge(a, (p, q) => {
    eachEdge(b, (r, s) => {
      least = segmentsMeet(p, q, r, s) ? 0 : Math.min(
        least,
        distanceToSegment(p, r, s), distanceToSegment(q, r, s), distanceToSegment(r, p, q), distanceToSegment(s, p, q),
      );
    });
  });
  return least;
}
