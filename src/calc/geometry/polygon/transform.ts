import {bounds} from './bounds.js';
import type {Point, Polygon} from './point.js';

/** The outline moved by (dx, dy) metres. */
export const moved = (polygon: Polygon, dx: number, dy: number): Polygon =>
  polygon.map(({x, y}) => ({x: x + dx, y: y + dy}));

/** The outline moved so that its bounds begin at (x, y). */
export function movedTo(polygon: Polygon, x: number, y: number): Polygon {
  const from = bounds(polygon);
  return moved(polygon, x - from.x, y - from.y);
}

/** The outline turned counter-clockwise by `angle` radians about a point. */
export function turned(polygon: Polygon, angle: number, about: Point = {x: 0, y: 0}): Polygon {
  const c = Math.cos(angle), s = Math.sin(angle);
  return polygon.map(({x, y}) => ({
    x: about.x + c * (x - about.x) - s * (y - about.y),
    y: about.y + s * (x - about.x) + c * (y - about.y),
  }));
}

/** The outline turned counter-clockwise about the origin by whole quarter turns, without rounding. */
export function quarterTurned(polygon: Polygon, quarters: number): Polygon {
  switch (((quarters % 4) + 4) % 4) {
    // 0 - y rather than -y, which would turn 0 into -0
    case 1: return polygon.map(({x, y}) => ({x: 0 - y, y: x}));
    case 2: return polygon.map(({x, y}) => ({x: 0 - x, y: 0 - y}));
    case 3: return polygon.map(({x, y}) => ({x: y, y: 0 - x}));
    default: return polygon;
  }
}

/** The outline turned over about the y axis (x becomes −x), its corners still counter-clockwise. */
export const mirrored = (polygon: Polygon): Polygon =>
  polygon.map(({x, y}) => ({x: 0 - x, y})).reverse();
