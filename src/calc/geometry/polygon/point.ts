/** A point of a flat part, in metres. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The corners of a flat outline, counter-clockwise; the last corner joins the first and is not repeated. */
export type Polygon = readonly Point[];

/** How close two edges may come and still only touch: a nanometre, far below any knife and far above rounding. */
export const touching = 1e-9;

/** Calls `visit` with the two ends of every edge. */
export function eachEdge(polygon: Polygon, visit: (from: Point, to: Point) => void): void {
  polygon.forEach((to, i) => {
    const from = polygon.at(i - 1);
    if (from) visit(from, to);
  });
}
