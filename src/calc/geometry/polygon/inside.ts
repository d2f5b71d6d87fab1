import {eachEdge, touching, type Point, type Polygon} from './point.js';
import {distanceToSegment} from './segments.js';

/** Where a point lies: a point within `tolerance` metres of the outline itself is on its edge. */
export function pointInPolygon(point: Point, polygon: Polygon, tolerance = touching): 'inside' | 'edge' | 'outside' {
  let nearest = Infinity, crossings = 0;
  eachEdge(polygon, (a, b) => {
    nearest = Math.min(nearest, distanceToSegment(point, a, b));
    // a ray towards +x leaves an outline once more than it enters when it starts inside
    const crosses = a.y > point.y !== b.y > point.y
      && point.x < a.x + (point.y - a.y) / (b.y - a.y) * (b.x - a.x);
    if (crosses) crossings++;
  });
  if (nearest <= tolerance) return 'edge';
  return crossings % 2 ? 'inside' : 'outside';
}
