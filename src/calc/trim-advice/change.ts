import type {Stack} from '../bench/stack.js';
import type {DimensionPath, DimensionValue} from '../design/dimensions.js';
import type {ChangeId} from './seen.js';

export type Values = Readonly<Partial<Record<DimensionPath, DimensionValue>>>;

/** What the model says a plane glides like. */
export interface Gliding {
  /** Missing where it does not glide: it dives or stalls. */
  readonly speed?: number;
  readonly margin: number;
}

interface Every {
  readonly id: ChangeId;
  /** What it makes of the design, where a dimension says it: the same change for every reader of that design. */
  readonly values?: Values;
}

/** A change of balance or tail, with the glide before and after it. */
interface Trimming extends Every {
  readonly before: Gliding;
  readonly after: Gliding;
}

/** One change, in this glider's numbers. SI. */
export type Change =
  | (Trimming & {readonly id: 'nose-on'; readonly mass: number; /** Behind the nose. */ readonly at: number; /** Whether a weight is there already. */ readonly fitted: boolean; readonly values: Values})
  | (Trimming & {readonly id: 'nose-off'; readonly mass: number; /** Behind the nose. */ readonly at: number; readonly values: Values})
  | (Trimming & {readonly id: 'weight-back' | 'weight-forward'; readonly mass: number; readonly by: number; readonly to: number; readonly values: Values})
  | (Trimming & {
    readonly id: 'slip-more' | 'slip-less'; readonly values: Values;
    /** The tail's rear edge comes up, or down, by so much; less than nothing is never given. */
    readonly edge: number;
    /** What makes that height. */
    readonly stack: Stack;
    /** The tail's angle then, front edge up. */
    readonly angle: number;
  })
  | (Every & {readonly id: 'throw'; readonly speed: number; readonly angle: number; /** Where a ball lands thrown level as fast. */ readonly ball: number; readonly height: number})
  | (Every & {readonly id: 'calm'; readonly wind: number})
  /** The fins' rear edge, bent over its last `strip`. */
  | (Every & {readonly id: 'fin'; readonly side: 'left' | 'right'; readonly bend: number; readonly angle: number; readonly strip: number})
  /** Without a side: on the one that comes up, whichever way the nose points. */
  | (Every & {readonly id: 'tip'; readonly side?: 'left' | 'right'; readonly mass: number})
  /** Half of the wing whose rear edge has to come up at the tip, by so much to the other. */
  | (Every & {readonly id: 'untwist'; readonly side?: 'left' | 'right'; readonly edge: number; readonly angle: number})
  /** The body, whose end has to come to that side by so much. */
  | (Every & {readonly id: 'straighten'; readonly by: number; readonly side: 'left' | 'right'; readonly values: Values})
  /** The wing, until both tips are as far from the tail. */
  | (Every & {readonly id: 'square'; readonly to: number; readonly values: Values})
  /** The tip on that side stands lower by so much. */
  | (Every & {readonly id: 'even-tips'; readonly by: number; readonly side: 'left' | 'right'; readonly values: Values})
  | (Every & {readonly id: 'dihedral'; readonly by: number; readonly values?: Values})
  | (Every & {readonly id: 'fin-larger'; readonly by: number; readonly height: number; readonly values: Values})
  | (Every & {readonly id: 'secure'; readonly what: 'tail' | 'boards' | 'wing'})
  /** What a plane's glide rests on, what keeps it straight, or what holds it together. */
  | (Every & {readonly id: 'measure'; readonly what: Measured});

export type Measured = 'trim' | 'straight' | 'held';
