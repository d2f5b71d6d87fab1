import {SheetSearch} from '../../../calc/sheet/engine/index.js';
import type {Job} from '../../../calc/sheet/engine/index.js';
import {seed, type Report, type Runner} from './messages.js';

/** Between reports that have nothing new to show, and between pictures, ms. */
const quiet = 400;

/**
 * Searches in slices of so many ms and lets whoever shares the thread do its own work in between. The first layout is told at once,
 * better ones at most every so often.
 */
export function searchInSlices(job: Job, slice: number, tell: (report: Report) => void): Runner {
  const now = (): number => performance.now();
  const search = new SheetSearch(job, {seed, now});
  let spent = 0, told = -Infinity;
  let shown: typeof search.found;
  let next: ReturnType<typeof setTimeout> | undefined;
  const work = (): void => {
    const from = now();
    const more = search.work(slice);
    spent += now() - from;
    const {found} = search;
    const first = shown === undefined && found !== undefined;
    if (first || !more || now() - told > quiet) {
      told = now();
      tell({found: found === shown ? undefined : found, spent, done: !more});
      shown = found;
    }
    next = more ? setTimeout(work) : undefined;
  };
  next = setTimeout(work);
  let ended = false;
  return {
    rest: (resting) => {
      if (resting) clearTimeout(next);
      else if (!ended && next !== undefined) { clearTimeout(next); next = setTimeout(work); }
    },
    stop: () => { ended = true; clearTimeout(next); },
  };
}
