import type {XY} from '../pen.js';

/** An upright rectangle, by its middle. */
export interface Plate {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A straight line that words must not cross. */
export type Segment = readonly [from: XY, to: XY];

interface Corners { readonly left: number; readonly right: number; readonly low: number; readonly high: number }

const cornersOf = ({x, y, width, height}: Plate): Corners => ({left: x - width / 2, right: x + width / 2, low: y - height / 2, high: y + height / 2});

/** Whether a segment passes through a plate: the part of it inside each pair of sides must not be empty. */
export function crosses([from, to]: Segment, plate: Plate): boolean {
  const {left, right, low, high} = cornersOf(plate);
  let begin = 0, end = 1;
  for (const [start, move, least, most] of [[from.x, to.x - from.x, left, right], [from.y, to.y - from.y, low, high]] as const) {
    if (move === 0) {
      if (start <= least || start >= most) return false;
      continue;
    }
    const a = (least - start) / move, b = (most - start) / move;
    begin = Math.max(begin, Math.min(a, b));
    end = Math.min(end, Math.max(a, b));
  }
  return begin < end;
}

/** Whether two plates have a point in common. */
export const overlap = (a: Plate, b: Plate): boolean =>
  Math.abs(a.x - b.x) * 2 < a.width + b.width && Math.abs(a.y - b.y) * 2 < a.height + b.height;

/** Whether a point lies inside an outline, by the crossings of a line from it to the right. */
function holds(outline: readonly XY[], {x, y}: XY): boolean {
  let inside = false;
  outline.forEach((b, i) => {
    const a = outline.at(i - 1) ?? b;
    if (a.y > y !== b.y > y && x < a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x)) inside = !inside;
  });
  return inside;
}

const steps = 9;

/** From the middle outwards, so that the nearest place is found early and the rest need no look. */
const outwards = [0, ...Array.from({length: steps}, (_, i) => [i + 1, -i - 1]).flat()];

/** Whether an outline is a rectangle that stands straight: then what lies within its bounds crosses none of its sides. */
const isUpright = (outline: readonly XY[]): boolean => outline.length === 4 && outline.every(({x, y}, i) => {
  const before = outline.at(i - 1);
  return before?.x === x || before?.y === y;
});

const sides = (outline: readonly XY[]): readonly Segment[] => outline.map((to, i) => [outline.at(i - 1) ?? to, to]);

/**
 * A place inside an outline for words so wide and so high, clear of lines and of other words, as near its middle as can be;
 * undefined where there is none.
 */
export function placeFor(outline: readonly XY[], width: number, height: number, lines: readonly Segment[], taken: readonly Plate[]): XY | undefined {
  const xs = outline.map(({x}) => x), ys = outline.map(({y}) => y);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  // words that fill the outline to the brim still fit: rounding must not keep them out
  const hair = 1e-9 * (right - left + high - low);
  const spare = {x: (right - left - width) / 2, y: (high - low - height) / 2};
  if (spare.x < -hair || spare.y < -hair) return undefined;
  const reach = {x: Math.max(spare.x, 0), y: Math.max(spare.y, 0)};
  const obstacles = isUpright(outline) ? lines : [...sides(outline), ...lines];
  let best: XY | undefined, nearest = Infinity;
  for (const i of outwards) {
    for (const j of outwards) {
      const distance = Math.hypot(i * reach.x, j * reach.y);
      if (distance >= nearest) continue;
      const at = {x: (left + right) / 2 + i / steps * reach.x, y: (low + high) / 2 + j / steps * reach.y};
      const plate = {...at, width: width - 4 * hair, height: height - 4 * hair};
      if (obstacles.some((line) => crosses(line, plate)) || taken.some((other) => overlap(plate, other)) || !holds(outline, at)) continue;
      nearest = distance;
      best = at;
    }
  }
  return best;
}
