import type {Box} from './job.js';
import {across, near} from './parting.js';
import {around} from './plan.js';

/** Boxes that move as one, with the numbers of those in it. */
interface Lump {
  readonly box: Box;
  readonly which: readonly number[];
  readonly fixed: boolean;
}

/** Towards an edge of a board: along x or y, and which way. */
interface Way {
  readonly along: boolean;
  readonly sign: 1 | -1;
}

const ways: readonly Way[] = [{along: false, sign: 1}, {along: false, sign: -1}, {along: true, sign: 1}, {along: true, sign: -1}];

/**
 * What lies about a free rectangle, pushed away from it towards all four edges, and the rectangle grown by that. Only what is in its way moves; the
 * first so many boxes never do. Boxes less than a gap apart, such as outlines laid into each other, move as one.
 */
export function pushedAway<T extends Box>(boxes: readonly T[], free: Box, {inside, gap, fixed, first}: {
  readonly inside: Box;
  readonly gap: number;
  readonly fixed: number;
  /** Whether it grows in x before it does in y. */
  readonly first: 'x' | 'y';
}): {readonly boxes: readonly T[]; readonly free: Box} {
  const before = lumped(boxes, gap, fixed);
  let lumps = before, grown = free;
  for (const way of first === 'x' ? ways : [...ways.slice(2), ...ways.slice(0, 2)]) ({lumps, grown} = pushed(lumps, grown, way, inside, gap));
  const moved = [...boxes];
  lumps.forEach(({box, which}, i) => {
    const from = before[i]?.box ?? box;
    for (const k of which) {
      const each = boxes[k];
      if (each) moved[k] = {...each, x: each.x + (box.x - from.x), y: each.y + (box.y - from.y)};
    }
  });
  return {boxes: moved, free: grown};
}

function pushed(lumps: readonly Lump[], free: Box, {along, sign}: Way, inside: Box, gap: number): {lumps: readonly Lump[]; grown: Box} {
  const to = across(along), beside = across(!along);
  const front = (box: Box): number => (sign > 0 ? to.start(box) + to.size(box) : -to.start(box));
  const back = (box: Box): number => front(box) - to.size(box);
  const ahead = (box: Box): readonly Lump[] => lumps.filter((other) => other.box !== box && back(other.box) >= front(box) - near
    && beside.start(box) < beside.start(other.box) + beside.size(other.box) + gap - near
    && beside.start(other.box) < beside.start(box) + beside.size(box) + gap - near);
  const edge = front(inside);
  // how far the front of each may get: to the edge, or to what lies before it
  const limits = new Map<Lump, number>();
  const limitOf = (lump: Lump): number => {
    const known = limits.get(lump);
    if (known !== undefined) return known;
    const limit = lump.fixed ? front(lump.box) : Math.max(front(lump.box), room(lump.box));
    limits.set(lump, limit);
    return limit;
  };
  const room = (box: Box): number => Math.min(edge, ...ahead(box).map((other) => limitOf(other) - to.size(other.box) - gap));
  const by = room(free) - front(free);
  if (!(by > near)) return {lumps, grown: free};
  return {
    lumps: lumps.map((lump) => {
      const limit = limits.get(lump);
      const ahead = limit === undefined ? 0 : limit - front(lump.box);
      return ahead > near ? {...lump, box: shifted(lump.box, along, sign * ahead)} : lump;
    }),
    grown: along ? {...free, y: free.y - (sign < 0 ? by : 0), width: free.width + by} : {...free, x: free.x - (sign < 0 ? by : 0), length: free.length + by},
  };
}

const shifted = (box: Box, along: boolean, by: number): Box => (along ? {...box, y: box.y + by} : {...box, x: box.x + by});

const apart = (a: Box, b: Box, gap: number): boolean =>
  a.x >= b.x + b.length + gap - near || b.x >= a.x + a.length + gap - near || a.y >= b.y + b.width + gap - near || b.y >= a.y + a.width + gap - near;

function lumped(boxes: readonly Box[], gap: number, fixed: number): readonly Lump[] {
  const lumps: Lump[] = [];
  boxes.forEach((box, i) => {
    let lump: Lump = {box, which: [i], fixed: i < fixed};
    for (let k = lumps.length - 1; k >= 0; k--) {
      const other = lumps[k];
      if (!other || apart(other.box, lump.box, gap)) continue;
      lumps.splice(k, 1);
      lump = {box: around(lump.box, other.box), which: [...other.which, ...lump.which], fixed: lump.fixed || other.fixed};
      k = lumps.length;   // the larger one may be near to others
    }
    lumps.push(lump);
  });
  return lumps;
}
