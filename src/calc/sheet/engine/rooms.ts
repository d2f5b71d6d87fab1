import {insideOf} from './boards.js';
import type {Board} from './job.js';
import type {Ready} from './ready.js';
import {areaOf, sum, type Room} from './task.js';

/** An empty rectangle of a certain board; those on one sheet share its number. */
export interface BoardRoom extends Room {
  readonly board: Board;
  readonly sheet?: number;
  /** Its corner, from the corner of the sheet, m. */
  readonly x: number;
  readonly y: number;
}

/** A whole board as a room; of a roll, as much as everything end to end could take. */
export function roomOf(board: Board, {job, grid, loose}: Ready): BoardRoom {
  const {length, width} = insideOf(board, job);
  const gap = grid.of(job.gap);
  const endToEnd = (): number => sum(loose.map(({part, poses: [size]}) => part.count * (Math.max(size.length, size.width) + job.gap)));
  return {
    board, x: job.margin, y: job.margin,
    length: grid.of(Number.isFinite(length) ? length : endToEnd()) + gap, width: grid.of(width) + gap,
  };
}

const available = (board: Board, {held}: Ready): number =>
  (board.count ?? Infinity) - held.filter((sheet) => sheet.board === board).length;

/** What is free on sheets on which pieces are held. */
export const heldRooms = ({held, grid, job}: Ready): BoardRoom[] => held.flatMap(({sheet, board, free}) => free.map((box): BoardRoom =>
  ({board, sheet, x: box.x, y: box.y, length: grid.of(box.length) + grid.of(job.gap), width: grid.of(box.width) + grid.of(job.gap)})));

/** As many of a board as could be needed. */
export function roomsOf(board: Board, ready: Ready): BoardRoom[] {
  const most = Number.isFinite(board.length) ? sum(ready.loose.map(({part}) => part.count)) : 1;
  const room = roomOf(board, ready);
  return Array.from({length: Math.min(available(board, ready), most)}, () => ({...room}));
}

/** Rooms to begin with: pieces left over first, the largest before the others, then all boards or those of one size. */
export function firstRooms(ready: Ready): BoardRoom[][] {
  const {boards} = ready;
  const area = ({length, width}: Board): number => length * width;
  const bySize = [...boards].sort((a, b) => area(b) - area(a));
  const over = bySize.filter(({leftover}) => leftover), whole = bySize.filter(({leftover}) => !leftover);
  const ways = [whole, ...whole.length > 1 ? whole.map((board) => [board]) : []];
  return ways.map((way) => [...heldRooms(ready), ...[...over, ...way].flatMap((board) => roomsOf(board, ready))]);
}

/** A little shorter, and as short as can be: with nothing to waste, a search soon comes to an end. */
function shorterRolls(room: BoardRoom, needed: number): BoardRoom[] {
  const little = room.length - Math.max(1, Math.floor(room.length / 1000)), least = Math.ceil(needed / room.width);
  return [...new Set([little, least])].filter((length) => length > 0 && length <= little).map((length) => ({...room, length}));
}

const isNew = ({leftover}: Board): number => (leftover ? 0 : 1);

/** Sets of rooms that would be better to fill than these: one less, one exchanged for a smaller one, or a shorter roll. */
export function cheaperRooms(rooms: readonly BoardRoom[], ready: Ready, least: number, needed: number): BoardRoom[][] {
  const used = (board: Board): number => rooms.filter((room) => room.board === board && room.sheet === undefined).length;
  const cheaper = rooms.flatMap((room, i): BoardRoom[][] => {
    const {board, sheet} = room;
    if (sheet !== undefined || rooms.findIndex((each) => each.board === board && each.sheet === undefined) !== i) return [];
    const others = rooms.filter((each) => each !== room);
    const size = areaOf(room);
    const smaller = ready.boards
      .filter((each) => each !== board && available(each, ready) > used(each)).map((each) => roomOf(each, ready))
      .filter((each) => isNew(each.board) < isNew(board) || each.board.leftover === board.leftover && areaOf(each) < size);
    const shorter = Number.isFinite(board.length) ? [] : shorterRolls(room, needed - sum(others.map(areaOf)));
    return [others, ...[...shorter, ...smaller].map((each) => [...others, each])];
  });
  const sheets = (set: readonly BoardRoom[]): number => sum(set.map(({board}) => isNew(board)));
  const area = (set: readonly BoardRoom[]): number => sum(set.map(areaOf));
  return cheaper
    .filter((set) => area(set) >= needed && sheets(set) >= least)
    .sort((a, b) => sheets(a) - sheets(b) || area(b) - area(a));
}
