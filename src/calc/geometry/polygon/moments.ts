import {eachEdge, type Point, type Polygon} from './point.js';

/** The area integrals of an outline; the second moments are about its own centroid. */
export interface AreaMoments {
  /** m², as signed by the way round. */
  readonly area: number;
  readonly centroid: Point;
  /** ∫ y² dA about the centroid, m⁴. */
  readonly xx: number;
  /** ∫ x² dA about the centroid, m⁴. */
  readonly yy: number;
  /** ∫ x y dA about the centroid, m⁴. */
  readonly xy: number;
}

/**
 * Area, centroid and second moments by Green's theorem, edge by edge, exact for straight edges.
 *
 * Times mass per area they are the mass, balance point and inertia of a flat part. An outline without area gives zero
 * moments at its first corner.
 */
export function areaMoments(polygon: Polygon): AreaMoments {
  const {x: ox, y: oy} = polygon[0] ?? {x: 0, y: 0};
  let a = 0, sx = 0, sy = 0, xx = 0, yy = 0, xy = 0;
  eachEdge(polygon, (from, to) => {
    const x0 = from.x - ox, y0 = from.y - oy, x1 = to.x - ox, y1 = to.y - oy;
    const cross = x0 * y1 - x1 * y0;
    a += cross / 2;
    sx += cross * (x0 + x1) / 6;
    sy += cross * (y0 + y1) / 6;
    xx += cross * (y0 * y0 + y0 * y1 + y1 * y1) / 12;
    yy += cross * (x0 * x0 + x0 * x1 + x1 * x1) / 12;
    xy += cross * (x0 * (2 * y0 + y1) + x1 * (y0 + 2 * y1)) / 24;
  });
  if (a === 0) return {area: 0, centroid: {x: ox, y: oy}, xx: 0, yy: 0, xy: 0};
  const cx = sx / a, cy = sy / a;
  return {
    area: a,
    centroid: {x: ox + cx, y: oy + cy},
    xx: xx - a * cy * cy,
    yy: yy - a * cx * cx,
    xy: xy - a * cx * cy,
  };
}

/** Where a flat part of even board balances. */
export const centroid = (polygon: Polygon): Point => areaMoments(polygon).centroid;
