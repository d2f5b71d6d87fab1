import {bounds, type Polygon} from '../../geometry/polygon/index.js';
import type {Usable} from '../shape.js';
import {clipped} from './clip.js';
import type {JobPart} from './job.js';

/** A part in as few equal lengths, end to end, as fit a room along its longer side. */
export function spliced(part: JobPart, {length, width}: Usable): readonly JobPart[] {
  const size = bounds(part.outline);
  const lying = size.length >= size.width;
  const upright = (points: Polygon): Polygon => (lying ? points : points.map(({x, y}) => ({x: y, y: x})).reverse());
  const [start, long] = lying ? [size.x, size.length] : [size.y, size.width];
  const longest = part.mayTurn ? Math.max(length, width) : lying === (part.liesAcross !== true) ? length : width;
  const lengths = Math.ceil(long / longest - 1e-9);
  const outline = upright(part.outline);
  return Array.from({length: lengths}, (_, i): JobPart => ({
    ...part,
    id: `${part.id} ${i + 1}/${lengths}`,
    outline: upright(between(outline, start + long * i / lengths, start + long * (i + 1) / lengths)),
  }));
}

/** The part of an outline from x0 to x1. */
const between = (outline: Polygon, x0: number, x1: number): Polygon =>
  clipped(clipped(outline, ({x}) => x - x0), ({x}) => x1 - x);
