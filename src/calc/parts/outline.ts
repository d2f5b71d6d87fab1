import {sectionAt, type Station} from '../geometry/planform/index.js';
import type {Point, Polygon} from '../geometry/polygon/index.js';

/** The point of a surface that lies `behind` its leading edge, `across` from the centre line (negative to the left). */
function pointOn(stations: readonly Station[], across: number, behind: (chord: number) => number): Point {
  const {back, chord} = sectionAt(stations, Math.abs(across)) ?? {back: 0, chord: 0};
  return {x: across, y: 0 - back - behind(chord)};
}

/** A line along a surface from tip to tip, corner by corner, left to right. */
function along(stations: readonly Station[], behind: (station: Station) => number): Point[] {
  const right = stations.map((s) => ({x: s.at, y: 0 - s.back - behind(s)}));
  return straightened([...right.slice(1).map(({x, y}) => ({x: -x, y})).reverse(), ...right]);
}

/** Without the corners that lie on the straight line between their neighbours. */
function straightened(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  points.forEach((p, i) => {
    const before = kept.at(-1), after = points[i + 1];
    const bend = before && after
      ? (p.x - before.x) * (after.y - before.y) - (p.y - before.y) * (after.x - before.x) : Infinity;
    if (Math.abs(bend) > 1e-12) kept.push(p);
  });
  return kept;
}

/**
 * The outline of a wing or tailplane in one piece, seen from above as it flies: x to the right from the centre line, y
 * forward from the leading edge at the root. Counter-clockwise from the left end of the trailing edge.
 */
export const surfaceOutline = (stations: readonly Station[]): Polygon =>
  [...along(stations, ({chord}) => chord), ...along(stations, () => 0).reverse()];

/** The straight pieces of a line that runs from tip to tip at one distance behind the leading edge. */
export function spanwiseLines(stations: readonly Station[], behind: number): readonly (readonly [from: Point, to: Point])[] {
  const points = along(stations, () => behind);
  return points.slice(1).map((to, i) => [points[i] ?? to, to]);
}

/** The line from front to rear edge at a distance across from the centre line. */
export const chordLine = (stations: readonly Station[], across: number): readonly [from: Point, to: Point] =>
  [pointOn(stations, across, () => 0), pointOn(stations, across, (chord) => chord)];
