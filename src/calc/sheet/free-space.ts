/** An upright rectangle of free board. */
export interface Space {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** How the free board of a sheet is kept account of once a rectangle is taken out of one of its free spaces. */
export type Cut = (free: readonly Space[], from: Space, taken: Space) => readonly Space[];

/** Slivers thinner than this are rounding, not board. */
const sliver = 1e-9;

const isBoard = ({length, width}: Space): boolean => length > sliver && width > sliver;

const holds = (outer: Space, inner: Space): boolean =>
  inner.x >= outer.x - sliver && inner.y >= outer.y - sliver
  && inner.x + inner.length <= outer.x + outer.length + sliver
  && inner.y + inner.width <= outer.y + outer.width + sliver;

/** Straight cuts across the free space: the strip beyond `taken` keeps the full length of the space. */
export const cutAlong: Cut = (free, from, taken) => replaced(free, from, [
  {x: taken.x + taken.length, y: from.y, length: from.length - taken.length, width: taken.width},
  {x: from.x, y: taken.y + taken.width, length: from.length, width: from.width - taken.width},
]);

/** Straight cuts the other way: the strip beside `taken` keeps the full width of the space. */
export const cutAcross: Cut = (free, from, taken) => replaced(free, from, [
  {x: taken.x + taken.length, y: from.y, length: from.length - taken.length, width: from.width},
  {x: from.x, y: taken.y + taken.width, length: taken.length, width: from.width - taken.width},
]);

const replaced = (free: readonly Space[], from: Space, pieces: readonly Space[]): readonly Space[] =>
  [...free.filter((space) => space !== from), ...pieces.filter(isBoard)];

/** Keeps every largest free rectangle, overlapping as they may: J. Jylänki, A Thousand Ways to Pack the Bin (2010). */
export const keepLargest: Cut = (free, _from, taken) => {
  const right = taken.x + taken.length, top = taken.y + taken.width;
  const whole: Space[] = [], pieces: Space[] = [];
  for (const space of free) {
    const {x, y, length, width} = space;
    const apart = taken.x >= x + length - sliver || right <= x + sliver
      || taken.y >= y + width - sliver || top <= y + sliver;
    if (apart) {
      whole.push(space);
      continue;
    }
    pieces.push(...[
      {x, y, length: taken.x - x, width},
      {x: right, y, length: x + length - right, width},
      {x, y, length, width: taken.y - y},
      {x, y: top, length, width: y + width - top},
    ].filter(isBoard));
  }
  for (const [i, piece] of pieces.entries()) {
    const covered = whole.some((space) => holds(space, piece))
      || pieces.some((other, j) => i !== j && holds(other, piece) && (j < i || !holds(piece, other)));
    if (!covered) whole.push(piece);
  }
  return whole;
};
