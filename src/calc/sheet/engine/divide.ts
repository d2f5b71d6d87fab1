import {eachEdge, type Point, type Polygon} from '../../geometry/polygon/index.js';
import {leftOf} from './clip.js';

/** A straight line, from one point of it to another. */
export interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** How far short of the gap two outlines may come for the sake of rounding, m. */
const slack = 1e-9;

/**
 * A line along an edge of one of two outlines that has all of that outline on one side, and the other at least a gap away
 * on the other side; undefined when there is none. Of two convex outlines a gap apart that face each other with an edge it
 * finds one.
 */
export function lineBetween(a: Polygon, b: Polygon, gap: number): Line | undefined {
  return alongEdge(a, b, gap) ?? alongEdge(b, a, gap);
}

function alongEdge(own: Polygon, other: Polygon, gap: number): Line | undefined {
  let line: Line | undefined;
  eachEdge(own, (from, to) => {
    if (from.x === to.x && from.y === to.y) return;
    // outlines run counter-clockwise: their inside is to the left
    const leftBy = leftOf(from, to);
    if (own.every((point) => leftBy(point) >= -slack) && other.every((point) => leftBy(point) <= slack - gap)) line = {from, to};
  });
  return line;
}
