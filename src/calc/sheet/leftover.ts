import {keepLargest, type Space} from './free-space.js';
import type {SheetStock} from './layout.js';
import {usable} from './shape.js';
import {pace, type Stepwise} from '../stepwise.js';

/** Strips narrower than this go in the bin (common practice, no source): 25 mm still makes a prop or a doubler. */
export const worthKeeping = 0.025;

/** Free rectangles looked at between two stops. */
const stride = 5000;

/**
 * The largest rectangle of a sheet that is free of the given pieces, margins and the knife's gap, or undefined when it is
 * too narrow to keep. All from the corner of the sheet inside its margins.
 */
export function* largestLeftover(pieces: readonly Space[], stock: SheetStock): Stepwise<Space | undefined> {
  let best: Space | undefined;
  for (const space of yield* leftovers(pieces, stock)) if (!best || space.length * space.width > best.length * best.width) best = space;
  return best;
}

/** All such rectangles that cannot be made larger; they may overlap. */
export function* leftovers(pieces: readonly Space[], stock: SheetStock): Stepwise<readonly Space[]> {
  const due = pace(stride);
  const {gap} = stock;
  const room = usable(stock);
  const whole: Space = {x: 0, y: 0, length: room.length + gap, width: room.width + gap};
  let free: readonly Space[] = [whole];
  for (const {x, y, length, width} of pieces) {
    free = keepLargest(free, whole, {x, y, length: length + gap, width: width + gap});
    if (due(free.length)) yield;
  }
  return free.map((space): Space => ({...space, length: space.length - gap, width: space.width - gap}))
    .filter(({length, width}) => Math.min(length, width) >= worthKeeping);
}
