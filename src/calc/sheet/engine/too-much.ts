import type {Stepwise} from '../../stepwise.js';
import {usableBoards} from './boards.js';
import {gridFor} from './grid.js';
import type {Board, Job} from './job.js';
import {areaWithGap, leastUpright, roomWithGap} from './least-sheets.js';
import {lengthsOf, shapesOf} from './ready.js';
import {sum} from './task.js';

/**
 * Whether it is proved that the boards of a job cannot hold all its parts, square to their edges: a part is too big for each of them, or there
 * is not board enough by area or, where nothing is made of several lengths, by the sides of the rectangles. False proves nothing.
 */
export function* tooMuch(job: Job): Stepwise<boolean> {
  const {boards} = usableBoards(job);
  const wanted = job.parts.filter(({count}) => count > 0);
  const shapes = wanted.map((part) => shapesOf(part, boards, job));
  const all = shapes.flatMap((each) => ('code' in each ? [] : each));
  if (shapes.some((each) => 'code' in each)) return true;
  yield;
  // lengths end to end take no less board than the whole of them would, however it is divided
  const needed = sum(wanted.map(({count}, i) => {
    const each = shapes[i];
    return each && !('code' in each) ? areaWithGap(sum(each.map(({area}) => area)), job) * count : 0;
  }));
  const count = ({count: most = Infinity, length}: Board): number => (Number.isFinite(length) ? most : Infinity);
  if (needed > (1 + 1e-9) * sum(boards.map((board) => roomWithGap(board, job) * count(board)))) return true;
  if (all.length > shapes.length) return false;
  return (yield* leastUpright({boards, shapes: all, job, grid: gridFor(lengthsOf(all, boards, job))})) > sum(boards.map(count));
}
