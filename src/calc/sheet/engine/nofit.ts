import type {Point, Polygon} from '../../geometry/polygon/index.js';
import {hull} from './convex.js';

/** A convex region that the corner of one piece must keep out of, for the piece to keep clear of another. */
export interface Forbidden {
  readonly corners: Polygon;
  readonly low: number;
  readonly high: number;
  readonly left: number;
  readonly right: number;
}

/** Sides of the outline that stands for the knife's gap all round; it lies outside the circle and touches it straight up, down and sideways. */
const sides = 16;

/**
 * Where piece b must not be moved to, so that it keeps a gap from piece a: for each pair of convex pieces of the two, all
 * differences of their points (R. C. Art, An approach to the two dimensional irregular cutting stock problem, 1966).
 */
export function forbidden(a: readonly Polygon[], b: readonly Polygon[], gap: number): readonly Forbidden[] {
  const r = gap / Math.cos(Math.PI / sides);
  const round = gap === 0 ? [{x: 0, y: 0}] : Array.from({length: sides}, (_, i): Point => {
    const angle = (2 * i + 1) * Math.PI / sides;
    return {x: r * Math.cos(angle), y: r * Math.sin(angle)};
  });
  return a.flatMap((p) => b.map((q): Forbidden => {
    const apart = hull(p.flatMap((from) => q.map((to): Point => ({x: from.x - to.x, y: from.y - to.y}))));
    const corners = gap === 0 ? apart : hull(apart.flatMap((point) => round.map(({x, y}): Point => ({x: point.x + x, y: point.y + y}))));
    const xs = corners.map(({x}) => x), ys = corners.map(({y}) => y);
    return {corners, low: Math.min(...ys), high: Math.max(...ys), left: Math.min(...xs), right: Math.max(...xs)};
  }));
}

/** Where a level line leaves a convex region on the right if it passes through x inside it; else x. */
export function wayOut({corners}: Forbidden, x: number, y: number, touching: number): number {
  let from = Infinity, to = -Infinity;
  let a = corners[corners.length - 1] as Point;
  for (const b of corners) {
    if (a.y > y !== b.y > y) {
      const at = a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x);
      if (at < from) from = at;
      if (at > to) to = at;
    }
    a = b;
  }
  return from < x - touching && to > x + touching ? to : x;
}
