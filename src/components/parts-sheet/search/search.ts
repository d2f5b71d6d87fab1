import type {Sought} from '../../../calc/sheet/sought.js';
import {searchInWorker} from './in-worker.js';
import type {Report, Runner} from './messages.js';

export {laidFrom} from './laid-from.js';
export {isBetter} from './better.js';
export type {Report, Runner} from './messages.js';

/** A slice of the search on the page itself, ms: far below what a reader would notice. */
const slice = 6;

/** Workers are refused once and for all: by the page's policy, its address, or because the script is a classic one. */
let refused = false;

/** Begins a search in a worker, else in short slices on the page. */
export async function beginSearch(sought: Sought, tell: (report: Report) => void): Promise<Runner> {
  if (!refused) {
    try {
      return await searchInWorker(sought, tell);
    } catch {
      refused = true;
    }
  }
  const {searchInSlices} = await import('./slices.js');
  return searchInSlices(sought, slice, tell);
}
