import fc from 'fast-check';
import type {Point, Polygon} from '../../../../src/calc/geometry/polygon/index.js';

export const rectangle = (x: number, y: number, length: number, width: number): Polygon =>
  [{x, y}, {x: x + length, y}, {x: x + length, y: y + width}, {x, y: y + width}];

/** An outline with a re-entrant corner: a 0.3 × 0.2 m rectangle less its upper right 0.2 × 0.1 m. */
export const lShape: Polygon = [
  {x: 0, y: 0}, {x: 0.3, y: 0}, {x: 0.3, y: 0.1}, {x: 0.1, y: 0.1}, {x: 0.1, y: 0.2}, {x: 0, y: 0.2},
];

/** A tapered half wing: straight trailing edge below, swept leading edge above. */
export const taperedPanel: Polygon = [
  {x: 0, y: 0}, {x: 0.3, y: 0}, {x: 0.3, y: 0.08}, {x: 0, y: 0.14},
];

/** Random simple outlines, convex or not: corners at rising angles round a centre. */
export const anyOutline = fc.record({
  x: fc.double({min: -1, max: 1, noNaN: true}),
  y: fc.double({min: -1, max: 1, noNaN: true}),
  radii: fc.array(fc.double({min: 0.02, max: 0.4, noNaN: true}), {minLength: 3, maxLength: 9}),
  start: fc.double({min: 0, max: 6.28, noNaN: true}),
}).map(({x, y, radii, start}): Polygon => radii.map((r, i) => {
  const angle = start + 2 * Math.PI * i / radii.length;
  return {x: x + r * Math.cos(angle), y: y + r * Math.sin(angle)};
}));

/**
 * The area two simple outlines share, found in another way than the module under test does: each outline is a signed sum
 * of triangles from its first corner, and triangles are clipped by one another.
 */
export function sharedArea(a: Polygon, b: Polygon): number {
  let area = 0;
  for (const s of fan(a)) {
    for (const t of fan(b)) area += Math.sign(twiceArea(s) * twiceArea(t)) * clippedArea(s, t);
  }
  return area;
}

/** The least distance from a corner of either outline to an edge of the other: the gap when they do not cross. */
export function cornerGap(a: Polygon, b: Polygon): number {
  let least = Infinity;
  for (const [corners, edges] of [[a, b], [b, a]] as const) {
    for (const p of corners) {
      edges.forEach((q, i) => {
        const r = edges[(i + 1) % edges.length] ?? q;
        const along = Math.max(0, Math.min(1, dot(minus(p, q), minus(r, q)) / dot(minus(r, q), minus(r, q))));
        least = Math.min(least, Math.hypot(p.x - q.x - along * (r.x - q.x), p.y - q.y - along * (r.y - q.y)));
      });
    }
  }
  return least;
}

const minus = (p: Point, q: Point): Point => ({x: p.x - q.x, y: p.y - q.y});
const dot = (p: Point, q: Point) => p.x * q.x + p.y * q.y;

function fan(polygon: Polygon): Polygon[] {
  const [o, ...rest] = polygon;
  return rest.slice(1).map((q, i) => [o ?? q, rest[i] ?? q, q]);
}

const twiceArea = (polygon: Polygon): number =>
  polygon.reduce((sum, q, i) => {
    const p = polygon[(i + polygon.length - 1) % polygon.length] ?? q;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);

function clippedArea(subject: Polygon, clip: Polygon): number {
  const clockwise = twiceArea(clip) < 0;
  let left = subject;
  clip.forEach((a, i) => {
    const b = clip[(i + 1) % clip.length] ?? a;
    const side = (p: Point) => ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) * (clockwise ? -1 : 1);
    left = left.flatMap((p, j) => {
      const before = left[(j + left.length - 1) % left.length] ?? p;
      const s = side(before), t = side(p);
      const crossing = s < 0 !== t < 0
        ? [{x: before.x + s / (s - t) * (p.x - before.x), y: before.y + s / (s - t) * (p.y - before.y)}]
        : [];
      return t < 0 ? crossing : [...crossing, p];
    });
  });
  return Math.abs(twiceArea(left)) / 2;
}
