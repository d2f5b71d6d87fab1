import {moved} from '../../geometry/polygon/index.js';
import {largestLeftover, worthKeeping} from '../leftover.js';
import type {Placed, Turn, Unplaced} from '../layout.js';
import type {Shape} from '../shape.js';
import {pace, type Stepwise} from '../stepwise.js';
import type {Laid} from './field.js';
import type {Board, Box, Cutout, Found, FoundSheet} from './job.js';
import {partingOf, pushedTogether} from './parting.js';
import {planOf, uncut, withoutCuts} from './plan.js';
import type {Ready} from './ready.js';
import type {BoardRoom} from './rooms.js';
import {toilOf, type Toil} from './ruler.js';
import {sum} from './task.js';

/** What lies in a room; boxes without members are to be left over. */
export interface Filled {
  readonly room: BoardRoom;
  readonly laid: readonly Laid[];
}

interface Sheet extends Omit<FoundSheet, 'cutouts'> {
  readonly laid: readonly Laid[];
  /** Sheets of one look are cut alike. */
  readonly look: string;
}

/** Pieces gone through between two stops. */
const stride = 300;

/** A finished layout as its reader needs it; stops now and then. */
export function* foundFrom(filled: readonly Filled[], left: readonly Shape[], least: number, ready: Ready): Stepwise<Found> {
  const bySheet = new Map<unknown, Filled[]>();
  for (const each of filled) {
    const sheet = each.room.sheet ?? each.room;
    bySheet.set(sheet, [...bySheet.get(sheet) ?? [], each]);
  }
  const onHeld: Sheet[] = [], others: Sheet[] = [];
  const due = pace(stride);
  for (const {board, sheet, laid} of ready.held) {
    onHeld.push(yield* sheetOf(board, [...laid, ...laidIn(bySheet.get(sheet) ?? [])], sheet, ready));
    yield;
  }
  for (const [sheet, rooms] of bySheet) {
    if (typeof sheet === 'number' || !rooms[0]) continue;
    others.push(yield* sheetOf(rooms[0].room.board, laidIn(rooms), undefined, ready));
    yield;
  }
  const sheets = [...onHeld, ...inOrder(others)];
  const copies = new Map<string, number>();
  const nextCopy = (id: string): number => {
    const copy = copies.get(id) ?? 0;
    copies.set(id, copy + 1);
    return copy;
  };
  const found: FoundSheet[] = [];
  for (const {laid, look: _, ...sheet} of sheets) {
    const cutouts: Cutout[] = [];
    for (const each of laid) {
      cutouts.push(cutoutOf(each, found.length, nextCopy));
      if (due(each.members.length)) yield;
    }
    found.push({...sheet, cutouts});
  }
  const unplaced = [...ready.unplaced, ...left.map(({part: {id}}): Unplaced =>
    ({id, copy: nextCopy(id), problem: {code: 'sheets-run-out', args: {id, sheets: sheets.length}}}))];
  const differing = [...new Map(sheets.map((sheet) => [sheet.look, sheet])).values()];
  const toils: Toil[] = [];
  for (const {laid, plan} of differing) {
    toils.push(toilOf(laid, plan));
    if (due(laid.length)) yield;
  }
  return {
    sheets: found, unplaced, least,
    fewest: left.length === 0 && sheets.filter(({board}) => !board.leftover).length <= least,
    cuts: sum(toils.map(({cuts}) => cuts)), settings: sum(toils.map(({settings}) => settings)),
    spliced: ready.spliced, problems: ready.problems,
  };
}

/** Pieces left over are told apart by so many steps of a sheet. */
export const leftoverSteps = 50;

/** How good a layout is, most important first; of two the one that is smaller where they first differ is better. */
export function rankOf({sheets, cuts, settings, unplaced}: Found, areas: ReadonlyMap<string, number>): readonly number[] {
  const area = sheets.reduce((sum, {length, width}) => sum + length * width, 0);
  const leftover = Math.max(0, ...sheets.map((sheet) => (sheet.leftover ? sheet.leftover.length * sheet.leftover.width : 0)));
  const sheet = area / sheets.length || 1;
  return [
    unplaced.reduce((sum, {id}) => sum + (areas.get(id) ?? 0), 0),
    sheets.filter(({board}) => !board.leftover).length,
    area,
    // what is left over by less does not make up for more to cut
    -Math.floor(leftoverSteps * leftover / sheet + 1e-9),
    cuts + settings,
    -leftover,
  ];
}

/** Whether a layout is better than another by more than rounding. */
export function isBetter(rank: readonly number[], than: readonly number[] | undefined): boolean {
  if (!than) return true;
  const i = rank.findIndex((each, at) => Math.abs(each - (than[at] ?? 0)) > 1e-9 * Math.abs(each));
  return i >= 0 && (rank[i] ?? 0) < (than[i] ?? 0);
}

/** What lies in rooms, from the corner of their sheet. */
const laidIn = (rooms: readonly Filled[]): Laid[] =>
  rooms.flatMap(({room, laid}) => laid.map((each) => ({...each, x: room.x + each.x, y: room.y + each.y})));

/** One sheet, pushed together where it is cut edge to edge and nothing is held on it. */
function* sheetOf(board: Board, all: readonly Laid[], held: number | undefined, {job: {cuts, gap, margin}}: Ready): Stepwise<Sheet> {
  const laid = all.filter(({members}) => members.length > 0), kept = all.filter(({members}) => members.length === 0);
  const due = pace(stride);
  const used = Math.max(...laid.map(({x, length}) => x + length)) + margin;
  const length = Number.isFinite(board.length) ? board.length : used, {width} = board;
  const inside: Box = {x: margin, y: margin, length: length - 2 * margin, width: width - 2 * margin};
  const sheet = {board, held, length, width};
  const parting = cuts === 'straight' ? partingOf([...laid, ...kept], gap) : undefined;
  if (due(laid.length)) yield;
  if (parting) {
    const pushed = held === undefined ? pushedTogether(parting, [...laid, ...kept], inside, gap) : [...laid, ...kept];
    const boxes = pushed.slice(0, laid.length);
    if (due(laid.length)) yield;
    const plan = withoutCuts(planOf(parting, pushed, {x: 0, y: 0, length, width}, gap), boxes.length);
    if (due(laid.length)) yield;
    const offcuts = uncut(plan).filter(({cutout}) => cutout === undefined).map(({box}) => common(box, inside));
    return {...sheet, plan, laid: boxes, leftover: largestOf(offcuts), look: lookOf(board, boxes)};
  }
  const pieces = laid.flatMap(({x, y, members}) => members.map((member) => ({...member, x: x + member.x - margin, y: y + member.y - margin})));
  const leftover = Number.isFinite(board.length) ? yield* largestLeftover(pieces, {length, width, margin, gap}) : undefined;
  return {...sheet, plan: undefined, laid, leftover: leftover && {...leftover, x: leftover.x + margin, y: leftover.y + margin}, look: lookOf(board, laid)};
}

const common = (a: Box, b: Box): Box => {
  const x = Math.max(a.x, b.x), y = Math.max(a.y, b.y);
  return {x, y, length: Math.min(a.x + a.length, b.x + b.length) - x, width: Math.min(a.y + a.width, b.y + b.width) - y};
};

const largestOf = (boxes: readonly Box[]): Box | undefined => boxes
  .filter(({length, width}) => Math.min(length, width) >= worthKeeping)
  .sort((a, b) => b.length * b.width - a.length * a.width)[0];

/** Sheets of one board together and those cut alike next to each other, the one with the largest piece left over last. */
function inOrder(sheets: readonly Sheet[]): readonly Sheet[] {
  const left = ({leftover}: Sheet): number => (leftover ? leftover.length * leftover.width : 0);
  return [...sheets].sort((a, b) => left(a) - left(b) || Number(a.look > b.look) - Number(a.look < b.look));
}

const lookOf = (board: Board, laid: readonly Laid[]): string => board.id + laid
  .map(({x, y, length, width, members}) => [x, y, length, width].map((each) => Math.round(each * 1e6)).join() + members.map(({shape}) => shape.part.id).join())
  .sort().join();

function cutoutOf({members, ...box}: Laid, sheet: number, nextCopy: (id: string) => number): Cutout {
  return {...box, pieces: members.map(({shape: {part: {id}, poses}, quarters, mirrored, ...at}): Placed => {
    const pose = poses.find((each) => each.quarters === quarters && each.mirrored === mirrored) ?? poses[0];
    const x = box.x + at.x, y = box.y + at.y;
    return {id, copy: nextCopy(id), sheet, x, y, turn: 90 * pose.quarters as Turn, mirrored, outline: moved(pose.outline, x, y)};
  })};
}
