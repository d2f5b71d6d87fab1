import {pace, type Stepwise} from '../../stepwise.js';
import type {Kind, Room} from './task.js';

/** A length as the share of a room's length that it takes up for certain; never more than 1 together where they fit. */
type Share = (length: number) => number;

/** Pieces weighed between two stops. */
const stride = 200_000;

/** So many thresholds are tried along each side, fewer where there are very many kinds. */
const thresholdsFor = (kinds: number): number => Math.min(16, Math.ceil(Math.sqrt(4e4 / kinds)));

/**
 * A number of rooms of one size that nothing can do with fewer of.
 *
 * A piece counts by the share of the room's length times the share of its width that it takes up; both are measured with
 * functions that never give more than 1 in all to what fits side by side. A piece that may turn counts the lesser way round.
 *
 * S. P. Fekete, J. Schepers, A general framework for bounds for higher-dimensional orthogonal packing problems (2004), with
 * u(ε) of theirs and f₂ of J. Carlier, F. Clautiaux, A. Moukrim, New reduction procedures and lower bounds for the
 * two-dimensional bin packing problem with fixed orientation (2007).
 */
export function* leastRooms(kinds: readonly Kind[], counts: readonly number[], room: Room): Stepwise<number> {
  const due = pace(stride);
  const along = yield* sharesOfAll(kinds, room.length), across = room.length === room.width ? along : yield* sharesOfAll(kinds, room.width);
  const onlyLying = kinds.map(({length, width, mayTurn}) => !mayTurn || width > room.length || length > room.width);
  const onlyUpright = kinds.map(({length, width}) => length > room.length || width > room.width);
  let most = 0;
  for (const f of along) {
    for (const g of across) {
      let sum = 0;
      f.forEach((x, i) => {
        const y = g[i] ?? x;
        const lying = x.lying * y.upright, upright = x.upright * y.lying;
        sum += (counts[i] ?? 0) * (onlyLying[i] ? lying : onlyUpright[i] ? upright : Math.min(lying, upright));
      });
      most = Math.max(most, sum);
      if (due(kinds.length)) yield;
    }
  }
  return Math.ceil(most - 1e-6);
}

/** Of each share that is tried, what it makes of each kind lying and upright. */
function* sharesOfAll(kinds: readonly Kind[], whole: number): Stepwise<(readonly {readonly lying: number; readonly upright: number}[])[]> {
  const all = [];
  const due = pace(stride);
  for (const share of sharesFor(kinds.flatMap(({length, width}) => [length, width]), whole)) {
    all.push(kinds.map(({length, width}) => ({lying: share(length), upright: share(width)})));
    if (due(10 * kinds.length)) yield;
  }
  return all;
}

function sharesFor(sides: readonly number[], whole: number): Share[] {
  const thresholds = [...new Set(sides.map((side) => Math.min(side, whole - side)))].filter((side) => side > 0);
  const step = Math.max(1, thresholds.length / thresholdsFor(sides.length / 2));
  const tried = thresholds.sort((a, b) => a - b).filter((_, i) => i % step < 1);
  return [
    (length) => length / whole,
    (length) => (2 * length > whole ? 1 : 2 * length === whole ? 0.5 : 0),
    ...tried.flatMap((least): Share[] => [
      (length) => (length > whole - least ? 1 : length < least ? 0 : length / whole),
      (length) => inWholeParts(length, least, whole),
    ]),
  ];
}

/** Short lengths count in whole parts, and what is left beside a long one too. */
function inWholeParts(length: number, part: number, whole: number): number {
  const parts = Math.floor(whole / part);
  if (2 * length > whole) return 1 - Math.floor((whole - length) / part) / parts;
  return 2 * length === whole ? 0.5 : Math.floor(length / part) / parts;
}
