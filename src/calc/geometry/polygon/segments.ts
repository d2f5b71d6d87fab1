import type {Point} from './point.js';

/** Twice the area of the triangle o a b: positive when b lies to the left of the way from o to a. */
export const cross = (o: Point, a: Point, b: Point): number =>
  (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);

/** Whether two numbers have opposite signs. Their product would not tell: it is 0 where both are tiny. */
export const opposite = (a: number, b: number): boolean => (a < 0 && b > 0) || (a > 0 && b < 0);

/** Where along a → b, from 0 to 1, the point of that segment nearest to p lies. */
export function nearestAlong(p: Point, a: Point, b: Point): number {
  const dx = b.x - a.x, dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  return square ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0;
}

/** The point at the share t of the way from a to b. */
export const between = (a: Point, b: Point, t: number): Point =>
  ({x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y)});

/** Distance from a point to a segment. */
export function distanceToSegment(p: Point, a: Point, b: Point): number {
  const q = between(a, b, nearestAlong(p, a, b));
  return Math.hypot(p.x - q.x, p.y - q.y);
}

/** Whether p, known to lie on the line through a and b, lies between them. */
const withinSpan = (p: Point, a: Point, b: Point): boolean =>
  Math.min(a.x, b.x) <= p.x && p.x <= Math.max(a.x, b.x) && Math.min(a.y, b.y) <= p.y && p.y <= Math.max(a.y, b.y);

/** Whether two segments have a point in common, ends included. */
export function segmentsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  const c1 = cross(a, b, c), d1 = cross(a, b, d), a1 = cross(c, d, a), b1 = cross(c, d, b);
  return opposite(c1, d1) && opposite(a1, b1)
    || c1 === 0 && withinSpan(c, a, b)
    || d1 === 0 && withinSpan(d, a, b)
    || a1 === 0 && withinSpan(a, c, d)
    || b1 === 0 && withinSpan(b, c, d);
}
