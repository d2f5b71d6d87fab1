import {LargestSearch, SheetSearch} from '../../../calc/sheet/engine/index.js';
import {ladderOf, type Sought} from '../../../calc/sheet/sought.js';
import {seed, type Report, type Runner} from './messages.js';

/** Between reports that have nothing new to show, and between pictures, ms. */
const quiet = 400;

/** A search under way and what it has to tell, whatever it looks for. */
interface Search {
  work(ms: number): boolean;
  read(): Omit<Report, 'spent' | 'done'>;
}

function begun(sought: Sought): Search {
  const options = {seed, now: () => performance.now()};
  if (sought.what === 'layout') {
    const search = new SheetSearch(sought.job, options);
    return {work: (ms) => search.work(ms), read: () => ({found: search.found})};
  }
  const search = new LargestSearch(ladderOf(sought), options);
  return {work: (ms) => search.work(ms), read: () => {
    const {shown, bound, trying, failed} = search;
    return {found: shown?.found, n: shown?.n, bound, trying, failed};
  }};
}

/**
 * Searches in slices of so many ms and lets whoever shares the thread do its own work in between. The first layout is told at once,
 * better ones at most every so often.
 */
export function searchInSlices(sought: Sought, slice: number, tell: (report: Report) => void): Runner {
  const search = begun(sought);
  let spent = 0, told = -Infinity;
  let shown: Report['found'];
  let next: ReturnType<typeof setTimeout> | undefined;
  const work = (): void => {
    const from = performance.now();
    const more = search.work(slice);
    spent += performance.now() - from;
    const {found, ...rest} = search.read();
    const first = shown === undefined && found !== undefined;
    if (first || !more || performance.now() - told > quiet) {
      told = performance.now();
      tell({...rest, found: found === shown ? undefined : found, spent, done: !more});
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
