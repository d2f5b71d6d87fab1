import {pointInPolygon} from './inside.js';
import {eachEdge, touching, type Point, type Polygon} from './point.js';
import {between, cross, distanceToSegment, nearestAlong} from './segments.js';

/**
 * Whether two simple outlines have area in common. Outlines that only touch, or overlap by no more than `tolerance`
 * metres, do not.
 *
 * Each outline is cut where the other meets it, so that every piece lies wholly inside, on or outside the other. Area is
 * shared exactly when some piece lies inside, or when the two outlines are one and the same.
 */
export function polygonsOverlap(a: Polygon, b: Polygon, tolerance = touching): boolean {
  const aInB = new Set(piecesOf(a, b, tolerance).map((point) => pointInPolygon(point, b, tolerance)));
  if (aInB.has('inside')) return true;
  if (!aInB.has('outside')) return aInB.has('edge');
  return piecesOf(b, a, tolerance).some((point) => pointInPolygon(point, a, tolerance) === 'inside');
}

/** The corners of `outline`, and the middle of every piece that `other` cuts it into. */
function piecesOf(outline: Polygon, other: Polygon, tolerance: number): Point[] {
  const points = [...outline];
  eachEdge(outline, (from, to) => {
    const cuts = [0, 1];
    eachEdge(other, (c, d) => {
      if (distanceToSegment(d, from, to) <= tolerance) cuts.push(nearestAlong(d, from, to));
      const fromSide = cross(c, d, from), toSide = cross(c, d, to);
      if (fromSide * toSide < 0 && cross(from, to, c) * cross(from, to, d) <= 0) cuts.push(fromSide / (fromSide - toSide));
    });
    cuts.sort((s, t) => s - t);
    cuts.forEach((t, i) => {
      const before = cuts[i - 1];
      if (before !== undefined && t > before) points.push(between(from, to, (before + t) / 2));
    });
  });
  return points;
}
