import {eachEdge, type Polygon} from '../geometry/polygon/index.js';

/**
 * How far along +x outline `b` must be moved to lie clear to the right of `a` with at least `gap` between them,
 * measured in any direction; −Infinity when they never stand in each other's way.
 *
 * The moves that bring an edge of one within the gap of a corner of the other fill a stadium: a segment with a round
 * margin. The answer is the furthest point of all these stadiums on the line of moves. Exact; own derivation.
 */
export function slideClear(a: Polygon, b: Polygon, gap: number): number {
  let clear = -Infinity;
  eachEdge(a, (p, q) => {
    for (const {x, y} of b) clear = Math.max(clear, stadiumEnd(p.x - x, p.y - y, q.x - x, q.y - y, gap));
  });
  eachEdge(b, (p, q) => {
    for (const {x, y} of a) clear = Math.max(clear, stadiumEnd(x - p.x, y - p.y, x - q.x, y - q.y, gap));
  });
  return clear;
}

/** The largest x at which a segment with a round margin of radius r meets the x axis, else −Infinity. */
function stadiumEnd(x0: number, y0: number, x1: number, y1: number, r: number): number {
  if (Math.min(y0, y1) > r || Math.max(y0, y1) < -r) return -Infinity;
  const end = Math.max(capEnd(x0, y0, r), capEnd(x1, y1, r));
  const dx = x1 - x0, dy = y1 - y0;
  if (dy === 0) return end;
  const along = r / Math.hypot(dx, dy);
  // the long side of the stadium that faces +x
  const sideX = x0 + Math.abs(dy) * along, sideY = y0 - Math.sign(dy) * dx * along;
  const t = -sideY / dy;
  return t >= 0 && t <= 1 ? Math.max(end, sideX + t * dx) : end;
}

/** The largest x at which a disc meets the x axis. */
const capEnd = (x: number, y: number, r: number): number =>
  Math.abs(y) <= r ? x + Math.sqrt(r * r - y * y) : -Infinity;
