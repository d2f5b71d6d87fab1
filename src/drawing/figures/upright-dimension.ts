import {widthOf} from '../lettering.js';
import type {Pen, XY} from '../pen.js';

/**
 * A height beside what it measures, to the right of it, or to the left if `offPx` is negative. Its figure stands along the line
 * where it fits and lies flat beside it where it does not.
 */
export function uprightDimension(pen: Pen, key: string, top: XY, foot: XY, offPx: number, words: string): void {
  const {u} = pen;
  const fits = (foot.y - top.y) / u > widthOf(words) + 10;
  const right = offPx > 0;
  if (right) pen.dimension(key, top, foot, offPx, fits ? words : '');
  else pen.dimension(key, foot, top, -offPx, fits ? words : '');
  if (fits) return;
  pen.text(`${key}-beside`, {x: top.x + (offPx + (right ? 7 : -7)) * u, y: (top.y + foot.y) / 2 + 4.5 * u}, words, {anchor: right ? 'start' : 'end'});
}
