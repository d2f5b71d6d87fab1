import type {Point, Polygon} from '../../geometry/polygon/index.js';
import {clipped} from './clip.js';

/** Twice the area of the triangle o a b: positive when b lies to the left of the way from o to a. */
const turn = (o: Point, a: Point, b: Point): number => (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);

/** The convex outline round points, counter-clockwise: A. M. Andrew, Another efficient algorithm for convex hulls in two dimensions (1979). */
export function hull(points: readonly Point[]): Polygon {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (from: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const point of from) {
      for (let [a, b] = chain.slice(-2); a && b && turn(a, b, point) <= 0; [a, b] = chain.slice(-2)) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** Outlines with more corners than this are taken as the convex outline round them, that one with no more directions than this. */
const fine = 24;

/** Convex pieces that cover an outline, exactly where it has few corners. */
export function coverOf(outline: Polygon): readonly Polygon[] {
  if (outline.length <= fine) return convexPieces(outline);
  const round = hull(outline);
  return [round.length <= fine ? round : blunt(round)];
}

/** The convex outline with few corners round another. */
function blunt(outline: Polygon): Polygon {
  const size = 2 * Math.max(...outline.flatMap(({x, y}) => [Math.abs(x), Math.abs(y)]));
  const directions = Array.from({length: fine}, (_, i) => ({x: Math.cos(2 * Math.PI * i / fine), y: Math.sin(2 * Math.PI * i / fine)}));
  return directions.reduce<Polygon>((kept, to) => {
    const along = ({x, y}: Point): number => x * to.x + y * to.y;
    const reach = Math.max(...outline.map(along));
    return clipped(kept, (point) => reach - along(point));
  }, [{x: -size, y: -size}, {x: size, y: -size}, {x: size, y: size}, {x: -size, y: size}]);
}

/** A simple outline, counter-clockwise, in convex pieces: split at each inward corner, along the shortest line that stays inside. */
function convexPieces(outline: Polygon): readonly Polygon[] {
  const n = outline.length;
  const corner = (i: number): Point => outline[(i + n) % n] ?? {x: 0, y: 0};
  const inward = outline.findIndex((point, i) => turn(corner(i - 1), point, corner(i + 1)) < 0);
  if (inward < 0) return [outline];
  const from = corner(inward);
  const isInside = (i: number): boolean => {
    const to = corner(i);
    // inside the corner itself, which is wider than half a turn
    if (turn(from, corner(inward + 1), to) < 0 && turn(corner(inward - 1), from, to) < 0) return false;
    return outline.every((a, j) => {
      const b = corner(j + 1);
      if (a === from || a === to || b === from || b === to) return true;
      return turn(from, to, a) * turn(from, to, b) > 0 || turn(a, b, from) * turn(a, b, to) > 0;
    });
  };
  const far = (i: number): number => Math.hypot(corner(i).x - from.x, corner(i).y - from.y);
  const to = outline.map((_, i) => i)
    .filter((i) => i !== inward && i !== (inward + 1) % n && i !== (inward + n - 1) % n && isInside(i))
    .sort((a, b) => far(a) - far(b))[0];
  if (to === undefined) return [hull(outline)];
  const run = (first: number, last: number): Polygon =>
    Array.from({length: (last - first + n) % n + 1}, (_, i) => corner(first + i));
  return [...convexPieces(run(inward, to)), ...convexPieces(run(to, inward))];
}
