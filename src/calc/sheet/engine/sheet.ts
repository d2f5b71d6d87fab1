import {largestLeftover, worthKeeping} from '../leftover.js';
import {pace, type Stepwise} from '../../stepwise.js';
import type {Laid} from './field.js';
import type {Board, Box, FoundSheet, Job} from './job.js';
import {partingOf, pushedTogether, type Parting} from './parting.js';
import {planOf, uncut, withoutCuts} from './plan.js';

/** A sheet of a finished layout. */
export interface Sheet extends Omit<FoundSheet, 'cutouts'> {
  readonly laid: readonly Laid[];
  /** Sheets of one look are cut alike. */
  readonly look: string;
}

/** A sheet before anything is laid on it. */
export type Bare = Pick<Sheet, 'board' | 'held' | 'length' | 'width'>;

/** Pieces gone through between two stops. */
const stride = 300;

/** Pieces left over are told apart by so many steps of a sheet. */
export const leftoverSteps = 50;

/** One sheet, pushed together where it is cut edge to edge and nothing is held on it. */
export function* sheetOf(board: Board, all: readonly Laid[], held: number | undefined, job: Job): Stepwise<Sheet> {
  const {cuts, gap, margin} = job;
  const laid = all.filter(({members}) => members.length > 0), kept = all.filter(({members}) => members.length === 0);
  const due = pace(stride);
  const used = Math.max(...laid.map(({x, length}) => x + length)) + margin;
  const length = Number.isFinite(board.length) ? board.length : used, {width} = board;
  const sheet = {board, held, length, width};
  const parting = cuts === 'straight' ? partingOf([...laid, ...kept], gap) : undefined;
  if (due(laid.length)) yield;
  if (parting) {
    const pushed = held === undefined ? pushedTogether(parting, [...laid, ...kept], insideOf(sheet, margin), gap) : [...laid, ...kept];
    if (due(laid.length)) yield;
    return cutApart(sheet, parting, pushed, laid.length, job);
  }
  return yield* cutOut({...sheet, laid}, job);
}

/** A sheet cut edge to edge; boxes from a number on are left over. */
export function cutApart(sheet: Bare, parting: Parting, boxes: readonly Laid[], pieces: number, {gap, margin}: Job): Sheet {
  const {board, length, width} = sheet;
  const laid = boxes.slice(0, pieces);
  const plan = withoutCuts(planOf(parting, boxes, {x: 0, y: 0, length, width}, gap), pieces);
  const offcuts = uncut(plan).filter(({cutout}) => cutout === undefined).map(({box}) => common(box, insideOf(sheet, margin)));
  return {...sheet, plan, laid, leftover: largestOf(offcuts), look: lookOf(board, laid)};
}

/** A sheet from which pieces are cut along any outline. */
export function* cutOut(sheet: Bare & Pick<Sheet, 'laid'>, {gap, margin}: Job): Stepwise<Sheet> {
  const {board, length, width, laid} = sheet;
  const pieces = laid.flatMap(({x, y, members}) => members.map((member) => ({...member, x: x + member.x - margin, y: y + member.y - margin})));
  const leftover = Number.isFinite(board.length) ? yield* largestLeftover(pieces, {length, width, margin, gap}) : undefined;
  return {...sheet, plan: undefined, leftover: leftover && {...leftover, x: leftover.x + margin, y: leftover.y + margin}, look: lookOf(board, laid)};
}

/** What may be used of a sheet. */
export const insideOf = ({length, width}: Bare, margin: number): Box => ({x: margin, y: margin, length: length - 2 * margin, width: width - 2 * margin});

export const areaLeft = ({leftover}: Pick<Sheet, 'leftover'>): number => (leftover ? leftover.length * leftover.width : 0);

const common = (a: Box, b: Box): Box => {
  const x = Math.max(a.x, b.x), y = Math.max(a.y, b.y);
  return {x, y, length: Math.min(a.x + a.length, b.x + b.length) - x, width: Math.min(a.y + a.width, b.y + b.width) - y};
};

const largestOf = (boxes: readonly Box[]): Box | undefined => boxes
  .filter(({length, width}) => Math.min(length, width) >= worthKeeping)
  .sort((a, b) => b.length * b.width - a.length * a.width)[0];

const lookOf = (board: Board, laid: readonly Laid[]): string => board.id + laid
  .map(({x, y, length, width, members}) => [x, y, length, width].map((each) => Math.round(each * 1e6)).join() + members.map(({shape}) => shape.part.id).join())
  .sort().join();
