import type {TurnTrack} from './turning.js';

export type Side = 'left' | 'right';

/** What somebody who watches sees of a turn: 'hardly' a turn, a circle, a plane that rolls over, or one that noses up or down too steeply to be followed. */
export type TurnSeen =
  | {readonly kind: 'circle'; readonly side: Side; /** Of the circle it flies in the end, m. */ readonly across: number}
  | {readonly kind: 'hardly' | 'rolls-over' | 'too-steep'; readonly side: Side};

/** Turned less than this when it lands, a plane hardly turns; banked further than this before it has come round, it is over on its side. Common practice, no source. */
const hardly = 3 * Math.PI / 180, tipped = 20 * Math.PI / 180;

const sideOf = (value: number): Side => (value < 0 ? 'left' : 'right');

export function turnSeen({last, radius, ends, bank}: TurnTrack): TurnSeen {
  const side = sideOf(last.heading), banked = sideOf(bank);
  if (ends === 'tight') return Math.abs(bank) > Math.PI / 3 ? {kind: 'rolls-over', side: banked} : {kind: 'too-steep', side};
  if (Math.abs(bank) > tipped && banked !== side) return {kind: 'rolls-over', side: banked};
  return Math.abs(last.heading) < hardly ? {kind: 'hardly', side} : {kind: 'circle', side, across: 2 * Math.abs(radius)};
}
