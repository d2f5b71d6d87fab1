import {check} from './check.mjs';
import {packed} from './packers.mjs';

/** Time the process has worked, in ms, whatever else runs on the machine. */
export const worked = () => {
  const {user, system} = process.cpuUsage();
  return (user + system) / 1000;
};

/** How good a layout is: sheets, or how much of a strip is used, in units of the instance. */
const valueOf = ({sheets}, {strip}) => (strip ? Math.round(sheets[0].length * 1e6) / 1e3 : sheets.length);

/** What the engine made of a task, or why it cannot stand. */
export function measure(task, SheetSearch) {
  try { return measured(task, SheetSearch); } catch (error) { return {fault: error.message}; }
}

/** Runs the engine on a task, checks every layout that it shows, and says how good it was after each of the times. */
function measured(task, SheetSearch) {
  const {seconds, job, best, strip} = task;
  let start = worked();
  const search = new SheetSearch(job, {seed: 1, now: worked});
  const values = {};
  let shown, first, slice = 0, busy = true;
  for (const limit of seconds) {
    while (busy && (worked() - start < limit * 1000 || !search.found)) {
      const before = worked();
      busy = search.work(shown ? 20 : 0);
      slice = Math.max(slice, worked() - before);
      if (search.found === shown) continue;
      shown = search.found;
      first ??= worked() - start;
      const checking = worked();
      check(shown, job);
      start += worked() - checking;
      // nothing better can be found, or the best known was
      if (strip ? valueOf(shown, task) <= best + 1e-6 : shown.fewest) busy = false;
    }
    values[limit] = valueOf(shown, task);
  }
  return {values, first, slice, least: shown.least, packer: packed(task)};
}
