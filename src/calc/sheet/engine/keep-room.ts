import {worthKeeping} from '../leftover.js';
import {insideOf} from './boards.js';
import type {Laid} from './field.js';
import type {Board} from './job.js';
import {Packing, type Filler} from './packing.js';
import type {Random} from './random.js';
import type {Ready} from './ready.js';
import type {BoardRoom} from './rooms.js';
import {areaOf, type Room, type Spot} from './task.js';

/** A packing with one more thing to find room for: a piece of board to be left over. */
export function withRoomToKeep({filler, rooms, spots, left}: Packing, room: Room): Packing {
  const extra = filler.kinds.length;
  const wider: Filler = {
    ...filler,
    kinds: [...filler.kinds, {...room, mayTurn: false, area: areaOf(room)}],
    size: (spot) => (spot.kind === extra ? room : filler.size(spot)),
  };
  return new Packing(wider, rooms, spots, [...left, 1]);
}

/** The same packing with that piece left over; `filler` knows only what is cut. */
export function withRoomKept(packing: Packing, filler: Filler): Packing {
  if (packing.filler === filler) return packing;
  const extra = filler.kinds.length;
  return new Packing(filler, packing.rooms, packing.spots.map((inRoom) => inRoom.filter(({kind}) => kind !== extra)), packing.left.slice(0, extra));
}

/** The pieces among spots that are only there to be left over, in m. */
export const roomsKept = (spots: readonly Spot[], filler: Filler, extra: number, {grid, job}: Ready): Laid[] =>
  spots.filter(({kind}) => kind >= extra).map((spot): Laid => {
    const {length, width} = filler.size(spot);
    return {x: grid.metres(spot.x), y: grid.metres(spot.y), length: grid.metres(length) - job.gap, width: grid.metres(width) - job.gap, members: []};
  });

/** The size of a piece of so much area that might be left over of a board: as long, or as wide, as one or two pieces leave it; undefined where it makes no piece. */
export function sizeToKeep(area: number, board: Board, {job, grid, loose}: Ready, random: Random): Room | undefined {
  const inside = insideOf(board, job);
  const sides = [0, ...loose.flatMap(({poses: [{length, width}]}) => [length + job.gap, width + job.gap])];
  const any = (): number => sides[Math.floor(sides.length * random())] ?? 0;
  const along = random() < 0.5;
  const [whole, across] = along ? [inside.length, inside.width] : [inside.width, inside.length];
  const one = whole - any() - any();
  const other = area / one;
  if (!(one >= worthKeeping && other >= worthKeeping && other <= across)) return undefined;
  const cells = (metres: number): number => Math.ceil(metres / grid.metres(1) - 1e-6) + grid.of(job.gap);
  return along ? {length: cells(one), width: cells(other)} : {length: cells(other), width: cells(one)};
}

/** A room without a strip of so much area at its end or above; undefined where it has less. */
export function roomKeeping(area: number, room: BoardRoom, along: boolean, {job: {gap}, grid}: Ready): BoardRoom | undefined {
  const strip = Math.max(worthKeeping, area / (grid.metres(along ? room.width : room.length) - gap));
  const less = (cells: number): number => cells - grid.of(strip + gap);
  const smaller = along ? {...room, length: less(room.length)} : {...room, width: less(room.width)};
  return Math.min(smaller.length, smaller.width) >= 0 ? smaller : undefined;
}
