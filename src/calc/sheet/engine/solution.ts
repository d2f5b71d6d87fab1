import {moved} from '../../geometry/polygon/index.js';
import type {Placed, Turn, Unplaced} from '../layout.js';
import type {Shape} from '../shape.js';
import {pace, type Stepwise} from '../../stepwise.js';
import {anchored} from './anchored.js';
import type {Laid} from './field.js';
import type {Cutout, Found, FoundSheet} from './job.js';
import type {Ready} from './ready.js';
import type {BoardRoom} from './rooms.js';
import {toilOf, type Toil} from './ruler.js';
import {areaLeft, leftoverSteps, sheetOf, type Sheet} from './sheet.js';
import {sum} from './task.js';

/** What lies in a room; boxes without members are to be left over. */
export interface Filled {
  readonly room: BoardRoom;
  readonly laid: readonly Laid[];
}

/** Pieces gone through between two stops. */
const stride = 300;

/** A finished layout as its reader needs it, which may be better than the one shown; stops now and then. */
export function* foundFrom(filled: readonly Filled[], left: readonly Shape[], least: number, ready: Ready, shown?: Found): Stepwise<Found> {
  const bySheet = new Map<unknown, Filled[]>();
  for (const each of filled) {
    const sheet = each.room.sheet ?? each.room;
    bySheet.set(sheet, [...bySheet.get(sheet) ?? [], each]);
  }
  let onHeld: Sheet[] = [], others: Sheet[] = [];
  const due = pace(stride);
  for (const {board, sheet, laid} of ready.held) {
    onHeld.push(yield* sheetOf(board, [...laid, ...laidIn(bySheet.get(sheet) ?? [])], sheet, ready.job));
    yield;
  }
  for (const [sheet, rooms] of bySheet) {
    if (typeof sheet === 'number' || !rooms[0]) continue;
    others.push(yield* sheetOf(rooms[0].room.board, laidIn(rooms), undefined, ready.job));
    yield;
  }
  const [emptiest] = [...onHeld, ...others].sort((a, b) => areaLeft(b) - areaLeft(a));
  if (emptiest) {
    const fixed = ready.held.find(({sheet}) => sheet === emptiest.held)?.laid.length ?? 0;
    const toBeat = shown?.sheets.length === onHeld.length + others.length ? Math.max(...shown.sheets.map(areaLeft)) : 0;
    const better = yield* anchored(emptiest, fixed, ready.job, toBeat);
    if (emptiest.held !== undefined) onHeld = onHeld.map((sheet) => (sheet === emptiest ? better : sheet));
    // those cut alike stay so
    else others = others.map((sheet) => (sheet.look === emptiest.look ? better : sheet));
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

/** Sheets of one board together and those cut alike next to each other, the one with the largest piece left over last. */
function inOrder(sheets: readonly Sheet[]): readonly Sheet[] {
  return [...sheets].sort((a, b) => areaLeft(a) - areaLeft(b) || Number(a.look > b.look) - Number(a.look < b.look));
}

function cutoutOf({members, ...box}: Laid, sheet: number, nextCopy: (id: string) => number): Cutout {
  return {...box, pieces: members.map(({shape: {part: {id}, poses}, quarters, mirrored, ...at}): Placed => {
    const pose = poses.find((each) => each.quarters === quarters && each.mirrored === mirrored) ?? poses[0];
    const x = box.x + at.x, y = box.y + at.y;
    return {id, copy: nextCopy(id), sheet, x, y, turn: 90 * pose.quarters as Turn, mirrored, outline: moved(pose.outline, x, y)};
  })};
}
