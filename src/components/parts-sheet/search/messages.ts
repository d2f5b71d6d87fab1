import type {Found} from '../../../calc/sheet/engine/job.js';
import type {Sought} from '../../../calc/sheet/sought.js';

/** To the worker: what to look for, and whether to rest. */
export type ToWorker = {readonly sought: Sought} | {readonly rest: boolean};

/** From the worker, first of all and then now and again. */
export interface Report {
  /** A layout better than those before; none when there is no news but the time. */
  readonly found?: Found | undefined;
  /** Where a number is asked: for which it is. */
  readonly n?: number | undefined;
  /** Likewise: no larger number can be had, which is proved; which number is being tried; and the least that was tried in vain. */
  readonly bound?: number | undefined;
  readonly trying?: number | undefined;
  readonly failed?: number | undefined;
  /** How long it has worked, ms. */
  readonly spent: number;
  /** Whether it has given up looking for anything better. */
  readonly done: boolean;
}

/** A search under way, wherever it runs. */
export interface Runner {
  /** It goes on from where it was. */
  rest(resting: boolean): void;
  stop(): void;
}

/** The seed of every search here: the same question finds the same layouts. */
export const seed = 1;
