import {bounds, polygonsOverlap, type Polygon} from '../geometry/polygon/index.js';
import {good, refused, type Outcome} from '../problem.js';

/** The most pages that one template is cut into. */
export const mostPages = 200;

/** Shown around what is to be cut, so that its outermost line has its full width. */
const rim = 1e-3;

/** What one page has room for, as it lies, in m. */
export interface PageRoom {
  readonly width: number;
  readonly height: number;
}

/** A template to spread over pages. Lengths in m. */
export interface ToTile {
  /** The board, its corner at (0, 0). */
  readonly length: number;
  readonly width: number;
  /** What is cut from it. */
  readonly outlines: readonly Polygon[];
}

/** Which neighbours of a page are pages too. */
export interface Neighbours {
  readonly left: boolean;
  readonly right: boolean;
  readonly above: boolean;
  readonly below: boolean;
}

/** The part of a template that one page shows. Lengths in m, y upwards, on the template as it lies on the paper. */
export interface Tile {
  /** From 0: columns from the left, rows from the top. */
  readonly column: number;
  readonly row: number;
  /** The lower left corner of what the page shows. */
  readonly x: number;
  readonly y: number;
  readonly neighbours: Neighbours;
}

export interface Tiling {
  /** Whether the board lies turned by a quarter on the paper: its point (x, y) is then at (width − y, x). */
  readonly turned: boolean;
  readonly columns: number;
  readonly rows: number;
  /** By how much pages that meet show the same, m. */
  readonly overlap: number;
  /** Row by row from the top; pages on which nothing is cut are left out. */
  readonly tiles: readonly Tile[];
}

type Box = readonly [left: number, low: number, right: number, high: number];

/** The pages of one grid, and how much of a template each of them has to itself. */
interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Spreads a template over as few pages as a handful of grids, upright and turned, finds. Neighbouring pages overlap; the trim line runs through
 * the middle of the overlap, and a page is kept exactly when something is cut between its trim lines.
 *
 * Refused: 'overlap-too-wide' {most} at `overlap`, 'paper-too-small' at `paper`, 'too-many-pages' {most, kind} at `paper`.
 */
export function tileSheet(sheet: ToTile, room: PageRoom, overlap: number): Outcome<Tiling> {
  const shorter = Math.min(room.width, room.height);
  if (!(shorter > 4 * rim)) return refused({code: 'paper-too-small', path: 'paper'});
  if (!(overlap >= 0 && overlap <= shorter / 3)) return refused({code: 'overlap-too-wide', path: 'overlap', args: {most: shorter / 3}});
  const turnedOutlines = sheet.outlines.map((outline) => outline.map(({x, y}) => ({x: sheet.width - y, y: x})));
  const upright = tile(sheet.outlines, room, overlap), turned = tile(turnedOutlines, room, overlap);
  const best = upright && (!turned || upright.tiles.length <= turned.tiles.length) ? upright : turned;
  if (!best || best.tiles.length > mostPages) return refused({code: 'too-many-pages', path: 'paper', args: {most: mostPages, kind: 'count'}});
  return good({...best, turned: best === turned, overlap});
}

/**
 * The fewest pages of the grids that begin at the left, in the middle or at the right of the room to spare, and so upwards;
 * undefined where the grid is so large that looking through it would take long.
 */
function tile(outlines: readonly Polygon[], room: PageRoom, overlap: number): Pick<Tiling, 'columns' | 'rows' | 'tiles'> | undefined {
  const [left, low, right, high] = boxOf(outlines);
  const step = {x: room.width - overlap, y: room.height - overlap};
  const columns = pagesFor(right - left, step.x, overlap), rows = pagesFor(high - low, step.y, overlap);
  if (!(columns * rows <= 2 * mostPages)) return undefined;
  const spare = {x: columns * step.x + overlap - (right - left), y: rows * step.y + overlap - (high - low)};
  let best: readonly Tile[] | undefined;
  for (const shift of [0, 0.5, 1]) {
    for (const rise of [1, 0.5, 0]) {
      const grid = {columns, rows, x: left - shift * spare.x, y: low - rise * spare.y};
      const tiles = tilesOf(grid, room, overlap, outlines);
      if (!best || tiles.length < best.length) best = tiles;
    }
  }
  return {columns, rows, tiles: best ?? []};
}

/** With a hair's breadth for rounding: a template exactly as long as its pages needs no further one. */
const pagesFor = (length: number, step: number, overlap: number): number => Math.max(1, Math.ceil((length - overlap) / step - 1e-9));

function boxOf(outlines: readonly Polygon[]): Box {
  const boxes = outlines.filter(({length}) => length > 0).map(bounds);
  if (boxes.length === 0) return [0, 0, 0, 0];
  return [
    Math.min(...boxes.map(({x}) => x)) - rim, Math.min(...boxes.map(({y}) => y)) - rim,
    Math.max(...boxes.map(({x, length}) => x + length)) + rim, Math.max(...boxes.map(({y, width}) => y + width)) + rim,
  ];
}

function tilesOf({columns, rows, x, y}: Grid, room: PageRoom, overlap: number, outlines: readonly Polygon[]): readonly Tile[] {
  const step = {x: room.width - overlap, y: room.height - overlap};
  const boxes = outlines.map((outline) => boxOf([outline]));
  const needed = Array.from({length: rows}, (_, row) => Array.from({length: columns}, (__, column) => {
    const corner = {x: x + column * step.x, y: y + (rows - 1 - row) * step.y};
    // what a page has to itself ends in the middle of an overlap, and at the outer edges with the page
    const [left, low, right, high]: Box = [
      corner.x + (column > 0 ? overlap / 2 : 0), corner.y + (row < rows - 1 ? overlap / 2 : 0),
      corner.x + room.width - (column < columns - 1 ? overlap / 2 : 0), corner.y + room.height - (row > 0 ? overlap / 2 : 0),
    ];
    const cell = [{x: left, y: low}, {x: right, y: low}, {x: right, y: high}, {x: left, y: high}];
    return outlines.some((outline, i) => {
      const [l, b, r, t] = boxes[i] ?? [0, 0, 0, 0];
      return l < right && r > left && b < high && t > low && polygonsOverlap(outline, cell);
    }) ? corner : undefined;
  }));
  const is = (column: number, row: number): boolean => needed[row]?.[column] !== undefined;
  return needed.flatMap((corners, row) => corners.flatMap((corner, column): Tile[] => corner ? [{
    column, row, ...corner,
    neighbours: {left: is(column - 1, row), right: is(column + 1, row), above: is(column, row - 1), below: is(column, row + 1)},
  }] : []));
}
