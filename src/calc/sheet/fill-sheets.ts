import {single, type Block} from './block.js';
import type {Cut, Space} from './free-space.js';
import {fits, type Usable} from './shape.js';

/** How well a rectangle suits a free space: the lowest wins. */
export type Rule = (space: Space, length: number, width: number) => number;

/** A block on a sheet, from the corner of the usable board. */
export interface Spot {
  readonly block: Block;
  readonly turned: boolean;
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
}

/** A way to fill sheets. */
export interface Strategy {
  readonly order: (a: Block, b: Block) => number;
  readonly rule: Rule;
  readonly cut: Cut;
}

/** Everything that found a place, and what did not because the sheets ran out. */
export interface Filling {
  readonly spots: readonly Spot[];
  readonly left: readonly Block[];
  readonly sheets: number;
}

/**
 * Puts each block, in order, on the first sheet that has room, into the free space that suits it best.
 *
 * The gap is kept by giving every rectangle, and the sheet itself, a strip of that width along its right and upper side.
 */
export function fillSheets(
  blocks: readonly Block[], sheet: Usable, gap: number, count: number, {order, rule, cut}: Strategy,
): Filling {
  const whole: Space = {x: 0, y: 0, length: sheet.length + gap, width: sheet.width + gap};
  const free: (readonly Space[])[] = [];
  const spots: Spot[] = [];
  const left: Block[] = [];
  const queue = [...blocks].sort(order);
  for (const block of queue) {
    let index = 0;
    let found: Fit | undefined;
    for (; index <= free.length && index < count; index++) {
      found = bestFit(block, free[index] ?? [whole], gap, rule);
      if (found) break;
    }
    if (!found) {
      // no room for two together: each may yet find its own
      if (block.members.length > 1) queue.push(...block.members.map(({shape}) => single(shape)));
      else left.push(block);
      continue;
    }
    const {from, taken, turned} = found;
    free[index] = cut(free[index] ?? [whole], from, taken);
    spots.push({block, turned, sheet: index, x: taken.x, y: taken.y});
  }
  return {spots, left, sheets: free.length};
}

interface Fit {
  readonly from: Space;
  readonly taken: Space;
  readonly turned: boolean;
}

function bestFit(block: Block, free: readonly Space[], gap: number, rule: Rule): Fit | undefined {
  let best: Fit | undefined;
  let least = Infinity;
  const turns = block.mayTurn && block.length !== block.width ? [false, true] : [false];
  for (const turned of turns) {
    const length = (turned ? block.width : block.length) + gap, width = (turned ? block.length : block.width) + gap;
    for (const from of free) {
      if (!fits(length, width, from)) continue;
      const score = rule(from, length, width);
      if (score >= least) continue;
      least = score;
      best = {from, taken: {x: from.x, y: from.y, length, width}, turned};
    }
  }
  return best;
}
