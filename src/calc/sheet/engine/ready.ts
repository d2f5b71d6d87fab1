import {bounds} from '../../geometry/polygon/index.js';
import type {Problem} from '../../problem.js';
import {mostPieces} from '../check.js';
import type {Unplaced} from '../layout.js';
import {shapeOf, type Shape, type Usable} from '../shape.js';
import type {Stepwise} from '../../stepwise.js';
import {insideOf, usableBoards} from './boards.js';
import {gridFor, type Grid} from './grid.js';
import {heldSheets, type HeldSheet} from './held.js';
import type {Board, Job, JobPart, Spliced} from './job.js';
import {nested, type Blocks} from './nested.js';
import {spliced} from './splice.js';

/** An outline with more corners than this is no part cut with a knife; looking for crossings in it would take too long. */
export const mostCorners = 1000;

/** So many different parts take long enough to stop in between. */
const many = 100;

/** A job made ready: what can be placed, and what cannot and why. */
export interface Ready {
  readonly job: Job;
  readonly boards: readonly Board[];
  /** All parts that can be placed. */
  readonly shapes: readonly Shape[];
  /** Those of them that are not held, with how many are to be placed. */
  readonly loose: readonly Shape[];
  readonly held: readonly HeldSheet[];
  /** The loose ones with as many as possible nested in pairs, where any nest. */
  readonly pairs: readonly Blocks[] | undefined;
  readonly grid: Grid;
  readonly unplaced: readonly Unplaced[];
  readonly spliced: readonly Spliced[];
  readonly problems: readonly Problem[];
}

/**
 * Makes a job ready. Parts that cannot be placed are named among the unplaced: 'part-too-big', 'outline-empty',
 * 'outline-crosses-itself' as in `placeParts`, 'outline-too-fine' {id, corners, most}, 'too-many-parts' {id, count, most};
 * among the problems: 'part-count-not-whole' {id, count}, and those of boards.
 */
export function* ready(given: Job): Stepwise<Ready> {
  const {job, problems: odd} = withLengths(given);
  const {boards, problems} = usableBoards(job);
  const shapes: Shape[] = [], unplaced: Unplaced[] = [], splices: Spliced[] = [], more: Problem[] = [];
  let pieces = 0;
  for (const part of job.parts) {
    const {id, count} = part;
    if (!Number.isSafeInteger(count) || count < 0) {
      more.push({code: 'part-count-not-whole', args: {id, count}});
      continue;
    }
    const found = shapesOf(part, boards, job);
    yield;
    if ('code' in found) unplaced.push(...missing(part, found));
    else if (pieces + count * found.length > mostPieces) unplaced.push(...missing(part, {code: 'too-many-parts', args: {id, count, most: mostPieces}}));
    else {
      pieces += count * found.length;
      shapes.push(...found.filter(({part: each}) => each.count > 0));
      if (found.length > 1) splices.push({id, into: found.map(({part: each}) => each.id)});
    }
  }
  const {sheets, problems: notHeld} = yield* heldSheets(job, boards, shapes);
  const held = sheets.flatMap(({laid}) => laid).flatMap(({members}) => members.map(({shape}) => shape));
  const loose = shapes.flatMap((shape): Shape[] => {
    const count = shape.part.count - held.filter((each) => each === shape).length;
    return count > 0 ? [{...shape, part: {...shape.part, count}}] : [];
  });
  yield;
  const [largest] = boards.map((board) => insideOf(board, job)).sort((a, b) => b.length * b.width - a.length * a.width);
  const pairs = largest && (yield* nested(loose, largest, job.gap, job.cuts === 'straight'));
  if (shapes.length > many) yield;
  const lengths = [
    ...lengthsOf(shapes, boards, job), ...pairs?.flatMap(({block: {length, width}}) => [length, width]) ?? [],
    ...sheets.flatMap(({free}) => free).flatMap(({length, width}) => [length, width]),
  ];
  return {job, boards, shapes, loose, pairs, held: sheets, grid: gridFor(lengths), unplaced, spliced: splices, problems: [...odd, ...problems, ...more, ...notHeld]};
}

/** The lengths that a grid must have for parts to lie on boards. */
export const lengthsOf = (shapes: readonly Shape[], boards: readonly Board[], job: Job): readonly number[] => [
  job.gap, ...shapes.flatMap(({poses: [{length, width}]}) => [length, width]),
  ...boards.map((board) => insideOf(board, job)).flatMap(({length, width}) => (Number.isFinite(length) ? [length, width] : [width])),
];

/** The job with a gap and a margin that are lengths, none where they were not: 'gap-negative' {gap}, 'margin-negative' {margin}. */
function withLengths(job: Job): {readonly job: Job; readonly problems: readonly Problem[]} {
  const isLength = (length: number): boolean => length >= 0 && length < Infinity;
  const gap = isLength(job.gap), margin = isLength(job.margin);
  return {
    job: {...job, gap: gap ? job.gap : 0, margin: margin ? job.margin : 0},
    problems: [...gap ? [] : [{code: 'gap-negative', args: {gap: job.gap}}], ...margin ? [] : [{code: 'margin-negative', args: {margin: job.margin}}]],
  };
}

/** An entry for each copy, but no more than could ever be placed. */
const missing = ({id, count}: JobPart, problem: Problem): Unplaced[] =>
  Array.from({length: Math.min(count, mostPieces)}, (_, copy) => ({id, copy, problem}));

/** A part made ready for any of the boards, in several lengths where it must and may be. */
export function shapesOf(part: JobPart, boards: readonly Board[], job: Job): readonly Shape[] | Problem {
  const {id, outline} = part;
  if (outline.length > mostCorners) return {code: 'outline-too-fine', args: {id, corners: outline.length, most: mostCorners}};
  const size = bounds(outline);
  const rooms = boards.map((board): Usable => {
    const room = insideOf(board, job);
    return Number.isFinite(room.length) ? room : {...room, length: size.length + size.width};
  }).sort((a, b) => b.length * b.width - a.length * a.width);
  const [largest] = rooms;
  if (!largest) return {code: 'no-board', args: {id}};
  const shape = firstFit(part, rooms);
  if (!('code' in shape)) return [shape];
  if (shape.code !== 'part-too-big' || !part.maySplice) return shape;
  const lengths = spliced(part, largest).map((each) => firstFit(each, rooms));
  const whole = lengths.filter((each): each is Shape => !('code' in each));
  return whole.length > 1 && whole.length === lengths.length ? whole : shape;
}

/** The part made ready for the first of the rooms that it fits, else why it does not fit the first. */
function firstFit(part: JobPart, rooms: readonly Usable[]): Shape | Problem {
  let first: Problem | undefined;
  for (const room of rooms) {
    const shape = shapeOf(part, room);
    if (!('code' in shape)) return shape;
    first ??= shape;
    if (shape.code !== 'part-too-big') break;
  }
  return first ?? {code: 'no-board', args: {id: part.id}};
}
