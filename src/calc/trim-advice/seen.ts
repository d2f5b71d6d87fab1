import {checkThrow} from '../flight-log/throw-check.js';
import {refused, type Outcome} from '../problem.js';
import type {CauseId} from './causes.js';

/** What a glider did after it left the hand. */
export const sights = ['good', 'dives', 'swoops', 'zooms', 'drops', 'left', 'right', 'rolls', 'wags', 'flutters'] as const;
export type Sight = (typeof sights)[number];

/** One throw as somebody saw it. SI. */
export interface Seen {
  readonly what: Sight;
  /** How far it flew, along the ground. */
  readonly distance?: number;
  /** For how long. */
  readonly time?: number;
}

/** What a person can change between two throws. */
export type ChangeId =
  | 'nose-on' | 'nose-off' | 'weight-back' | 'weight-forward' | 'slip-more' | 'slip-less'
  | 'throw' | 'calm' | 'fin' | 'tip' | 'untwist' | 'straighten' | 'square' | 'even-tips' | 'dihedral' | 'fin-larger' | 'secure' | 'measure';

/** A throw of this session, and what was changed after it: nothing where the plane was thrown again as it was. */
export interface Past {
  readonly seen: Seen;
  readonly changed?: ChangeId;
  /** What that was done against. */
  readonly cause?: CauseId;
  /** How fast it was to be thrown then, m/s: so that a speed which has risen since is not asked for without a word. */
  readonly right?: number;
}

/** What is wrong with the numbers of a throw, refused as `checkThrow`; nothing where none were measured. */
export function checkSeen({distance, time}: Seen): Outcome<never> | undefined {
  if (distance === undefined && time === undefined) return undefined;
  const problems = checkThrow({...(distance !== undefined && {distance}), ...(time !== undefined && {time})});
  return problems.length > 0 ? refused(...problems) : undefined;
}
