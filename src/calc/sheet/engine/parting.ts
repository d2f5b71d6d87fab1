import type {Box} from './job.js';
import {sum} from './task.js';

/** Lengths less apart than this are the same, m. */
export const near = 1e-8;

/** Boxes that cuts can part, each running edge to edge of the piece in hand: one box, or strips of them. */
export type Parting = Tight & ({readonly which: number} | {readonly along: boolean; readonly strips: readonly Parting[]});

/** What boxes take up when they are pushed together, and the cuts that part them then. */
interface Tight {
  readonly length: number;
  readonly width: number;
  readonly cuts: number;
}

/** How a box lies to parallel cuts: where it starts across them, its size across them, and how long they are. */
export interface Measures {
  readonly start: (box: Pick<Box, 'x' | 'y'>) => number;
  readonly size: (box: Pick<Box, 'length' | 'width'>) => number;
  readonly span: (box: Pick<Box, 'length' | 'width'>) => number;
}

/** Across cuts that run along x, which part strips that lie one above the other, or along y. */
export const across = (along: boolean): Measures => (along
  ? {start: ({y}) => y, size: ({width}) => width, span: ({length}) => length}
  : {start: ({x}) => x, size: ({length}) => length, span: ({width}) => width});

/** Of more boxes than this not every way to part them is tried. */
const mostTried = 24;

/** How to part boxes that lie a gap apart in as few cuts as seem to be needed; undefined when it cannot be done. */
export function partingOf(boxes: readonly Box[], gap: number, which: readonly number[] = boxes.map((_, i) => i)): Parting | undefined {
  const [only] = which;
  const box = only === undefined ? undefined : boxes[only];
  if (only !== undefined && box && which.length === 1) return {length: box.length, width: box.width, cuts: 0, which: only};
  const groupings = [true, false].map((along) => ({along, groups: groupsOf(along, boxes, which, gap)}))
    .filter(({groups}) => groups.length > 1).sort((a, b) => b.groups.length - a.groups.length);
  // what can be parted at all can be parted either way: with many boxes one will do
  const ways = (which.length > mostTried ? groupings.slice(0, 1) : groupings).flatMap(({along, groups}): Parting[] => {
    const strips = groups.map((group) => partingOf(boxes, gap, group));
    return strips.every((strip) => strip !== undefined) ? [{...tight(along, strips, gap), along, strips}] : [];
  });
  return ways.sort((a, b) => a.cuts - b.cuts)[0];
}

/** The boxes in groups that lie clear of each other, in order. */
function groupsOf(along: boolean, boxes: readonly Box[], which: readonly number[], gap: number): number[][] {
  const {start, size} = across(along);
  const groups: number[][] = [];
  let end = -Infinity;
  const inOrder = which.flatMap((i) => (boxes[i] ? [{i, box: boxes[i]}] : [])).sort((a, b) => start(a.box) - start(b.box));
  for (const {i, box} of inOrder) {
    if (start(box) >= end + gap - near) groups.push([]);
    groups.at(-1)?.push(i);
    end = Math.max(end, start(box) + size(box));
  }
  return groups;
}

function tight(along: boolean, strips: readonly Parting[], gap: number): Tight {
  const {size, span} = across(along);
  const total = sum(strips.map(size)) + gap * (strips.length - 1);
  const widest = Math.max(...strips.map(span));
  const cuts = sum(strips.map((strip) => strip.cuts + Number(span(strip) < widest - near))) + strips.length - 1;
  return along ? {length: widest, width: total, cuts} : {length: total, width: widest, cuts};
}

/** The boxes pushed together towards a corner as far as the cuts that part them allow. */
export function pushedTogether<T extends Box>(parting: Parting, boxes: readonly T[], corner: {readonly x: number; readonly y: number}, gap: number): T[] {
  const pushed = [...boxes];
  const push = (part: Parting, x: number, y: number): void => {
    if ('which' in part) {
      const box = boxes[part.which];
      if (box) pushed[part.which] = {...box, x, y};
      return;
    }
    let from = part.along ? y : x;
    for (const strip of part.strips) {
      if (part.along) push(strip, x, from); else push(strip, from, y);
      from += across(part.along).size(strip) + gap;
    }
  };
  push(parting, corner.x, corner.y);
  return pushed;
}
