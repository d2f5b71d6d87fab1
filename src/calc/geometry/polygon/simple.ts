import type {Polygon} from './point.js';
import {cross, segmentsMeet} from './segments.js';

/** Whether an outline goes round once without crossing or touching itself. A corner given twice running counts once. */
export function isSimple(polygon: Polygon): boolean {
  const corners = polygon.filter((p, i) => {
    const before = polygon.at(i - 1);
    return before?.x !== p.x || before.y !== p.y;
  });
  const n = corners.length;
  if (n < 3) return false;
  const corner = (i: number) => corners[i % n] ?? {x: 0, y: 0};
  for (let i = 0; i < n; i++) {
    const a = corner(i), b = corner(i + 1), c = corner(i + 2);
    const turnsBack = cross(a, b, c) === 0 && (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) < 0;
    if (turnsBack) return false;
    for (let j = i + 2; j < n - (i === 0 ? 1 : 0); j++) {
      if (segmentsMeet(a, b, corner(j), corner(j + 1))) return false;
    }
  }
  return true;
}
