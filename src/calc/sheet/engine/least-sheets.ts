import type {Stepwise} from '../../stepwise.js';
import {insideOf} from './boards.js';
import type {Board, Job} from './job.js';
import {leastRooms} from './least.js';
import {isRectangle} from './nested.js';
import type {Ready} from './ready.js';
import {sum, type Kind} from './task.js';

/**
 * A number of sheets, not counting pieces left over, that no layout of all the parts can do with fewer of; by area, and by
 * the largest upright rectangle in each part where that is the part itself.
 *
 * Pieces that keep a gap g stay apart when each is fattened by g/2 all round, and lie in the sheet fattened likewise.
 * A fattened piece of area A has at least the area (√A + √π g/2)², as a disc would (Brunn–Minkowski inequality). Upright
 * rectangles that keep a gap g keep g/√2 along one axis.
 */
export function* leastSheets(ready: Ready): Stepwise<number> {
  return ready.shapes.length > 0 && ready.boards.length > 0 ? Math.max(byArea(ready), yield* bySides(ready)) : 0;
}

/** The area that a part of an area takes of {@link roomWithGap} at least. */
export const areaWithGap = (area: number, {gap}: Job): number => (Math.sqrt(area) + Math.sqrt(Math.PI) * gap / 2) ** 2;

export function roomWithGap(board: Board, job: Job): number {
  const {length, width} = insideOf(board, job);
  const r = job.gap / 2;
  return length * width + 2 * (length + width) * r + Math.PI * r * r;
}

function byArea({boards, shapes, job}: Ready): number {
  let needed = sum(shapes.map(({part, area}) => part.count * areaWithGap(area, job)));
  const room = (board: Board): number => roomWithGap(board, job);
  const most = ({count = Infinity}: Board): number => count;
  for (const board of boards) if (board.leftover) needed -= room(board) * most(board);
  let sheets = 0;
  for (const board of boards.filter(({leftover}) => !leftover).sort((a, b) => room(b) - room(a))) {
    if (needed <= 0) break;
    const used = Math.min(most(board), Math.ceil(needed / room(board) - 1e-9) || 1);
    sheets += used;
    needed -= used * room(board);
  }
  return sheets;
}

function* bySides(ready: Ready): Stepwise<number> {
  const over = sum(ready.boards.map(({leftover, count = Infinity}) => (leftover ? count : 0)));
  return Number.isFinite(over) ? (yield* leastUpright(ready)) - over : 0;
}

/** A number of boards, of whichever size, that the upright rectangles among the parts cannot do with fewer of; 0 where one is a roll. */
export function* leastUpright({boards, shapes, job, grid}: Pick<Ready, 'boards' | 'shapes' | 'job' | 'grid'>): Stepwise<number> {
  // a share of the gap is seldom a whole number of cells
  const fine = (length: number): number => 1000 * grid.of(length);
  const apart = job.cuts === 'straight' ? fine(job.gap) : Math.floor(fine(job.gap) / Math.SQRT2);
  const insides = boards.map((board) => insideOf(board, job));
  const room = {
    length: fine(Math.max(...insides.map(({length}) => length))) + apart,
    width: fine(Math.max(...insides.map(({width}) => width))) + apart,
  };
  if (!Number.isFinite(room.length)) return 0;
  const upright = shapes.filter(isRectangle);
  const kinds = upright.map(({part: {mayTurn}, poses: [size]}): Kind => {
    const [length, width] = [fine(size.length) + apart, fine(size.width) + apart];
    return {length, width, mayTurn, area: length * width};
  });
  return yield* leastRooms(kinds, upright.map(({part}) => part.count), room);
}
