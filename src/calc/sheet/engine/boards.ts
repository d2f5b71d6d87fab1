import type {Problem} from '../../problem.js';
import {usable, type Usable} from '../shape.js';
import type {Board, Job} from './job.js';

/** The boards of a job that can be used, and what is wrong with the others: 'board-not-positive' {board, length, width}, … */
export function usableBoards({boards, margin}: Job): {readonly boards: readonly Board[]; readonly problems: readonly Problem[]} {
  const problems: Problem[] = [];
  const good = boards.filter((board) => {
    const {id, length, width, count} = board;
    if (!(length > 0 && width > 0 && width < Infinity)) problems.push({code: 'board-not-positive', args: {board: id, length, width}});
    else if (count !== undefined && !(Number.isSafeInteger(count) && count >= 0)) problems.push({code: 'board-count-not-whole', args: {board: id, count}});
    else if (!(Math.min(length, width) > 2 * margin)) problems.push({code: 'margin-too-wide', args: {edge: margin, length, width}});
    else return count !== 0;
    return false;
  });
  return {boards: good, problems};
}

/** What may be used of a board, inside its margins. */
export const insideOf = ({length, width}: Board, {margin, gap}: Job): Usable => usable({length, width, margin, gap});
