import {clipped} from '../../calc/sheet/engine/clip.js';
import type {LineSketch, PieceSketch} from '../figures/sheet-layout.js';
import type {XY} from '../pen.js';

/** An upright rectangle on a board, in mm, y upwards. */
export interface Area {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** Too small to write on. */
const least = 4;

const sides = [
  {of: ({x}: XY) => x, edge: ({left}: Area) => left, sign: 1}, {of: ({x}: XY) => x, edge: ({right}: Area) => right, sign: -1},
  {of: ({y}: XY) => y, edge: ({low}: Area) => low, sign: 1}, {of: ({y}: XY) => y, edge: ({high}: Area) => high, sign: -1},
] as const;

/**
 * An outline cut off at the four sides of an area, side by side. A hollow outline may keep a seam along a side, which
 * has no width and harms no lettering.
 */
export function clippedOutline(outline: readonly XY[], area: Area): readonly XY[] {
  return sides.reduce(
    (points, {of, edge, sign}) => clipped(points, (point) => sign * (of(point) - edge(area))), outline,
  );
}

const between = (from: XY, to: XY, t: number): XY => ({x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y)});

/** The part of a line inside an area, if any (Liang and Barsky 1984). */
function clippedLine(line: LineSketch, area: Area): readonly LineSketch[] {
  let begin = 0, end = 1;
  for (const {of, edge, sign} of sides) {
    const a = sign * (of(line.from) - edge(area)), b = sign * (of(line.to) - edge(area));
    if (a < 0 && b < 0) return [];
    if (a < 0) begin = Math.max(begin, a / (a - b));
    if (b < 0) end = Math.min(end, a / (a - b));
  }
  return begin < end ? [{...line, from: between(line.from, line.to, begin), to: between(line.from, line.to, end)}] : [];
}

/** What of a piece lies in an area, to be lettered; null where that is too little to write on. */
export function fragmentOf(piece: PieceSketch, area: Area): PieceSketch | null {
  const outline = clippedOutline(piece.outline, area);
  const xs = outline.map(({x}) => x), ys = outline.map(({y}) => y);
  if (outline.length < 3 || Math.min(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)) < least) return null;
  return {
    ...piece, outline,
    lines: piece.lines.flatMap((line) => clippedLine(line, area)),
    places: piece.places.filter(({at}) => at.x >= area.left && at.x <= area.right && at.y >= area.low && at.y <= area.high),
  };
}
