import {tileSheet, type Tile, type Tiling} from '../../calc/sheet/tiling.js';
import {good, refused, type Outcome} from '../../calc/problem.js';
import type {PieceSketch, SheetSketch} from '../figures/sheet-layout.js';
import type {XY} from '../pen.js';
import type {Box} from '../view.js';
import type {Paper, TemplateJob} from './job.js';

/** What most printers leave blank around a page, with some to spare. */
const margin = 10;

/** The boxes to measure, from their common lower left corner. */
export const boxes = {metric: {width: 100, height: 50}, inch: {width: 101.6, height: 50.8}} as const;

/** Between the template and the block with the boxes. */
const gap = 6;

/** Readers of PDF files show no page longer than 200 inches. */
const longestPage = 5080;

/** A board on its pages, the board and its pieces as they lie on the paper. */
export interface TiledSheet {
  readonly title: string;
  readonly length: number;
  readonly width: number;
  readonly pieces: readonly PieceSketch[];
  readonly tiling: Tiling;
}

export interface TemplatePage {
  /** From 1, through all sheets. */
  readonly number: number;
  readonly sheet: TiledSheet;
  readonly tile: Tile;
  /** The lower left corner of what the page shows of the board. */
  readonly corner: XY;
}

/** Where everything goes. True millimetres, y downwards on a page, but for the paper, which is as large as the file says. */
export interface TemplatePlan {
  readonly paper: Paper;
  readonly page: Paper;
  /** Where the page shows the board, and where it says what it is. */
  readonly window: Box;
  readonly block: Box;
  readonly pages: readonly TemplatePage[];
}

/** Column by letter, row by number: `B3`. */
export function codeOf({column, row}: Pick<Tile, 'column' | 'row'>): string {
  const letters = column < 26 ? '' : String.fromCharCode(64 + Math.floor(column / 26));
  return `${letters}${String.fromCharCode(65 + column % 26)}${String(row + 1)}`;
}

function layOutPage({board, sheets, paper, correction: {across, up}}: TemplateJob): Omit<TemplatePlan, 'pages'> {
  const boards = sheets.length > 0 ? sheets.map(({size}) => size ?? board) : [board];
  const length = Math.max(...boards.map((each) => each.length)), widest = Math.max(...boards.map((each) => each.width));
  const below = boxes.inch.height + gap;
  const page = paper ? {width: paper.width / across, height: paper.height / up}
    : {width: Math.max(length + 4, 190) + 2 * margin, height: widest + 4 + below + 2 * margin};
  const width = page.width - 2 * margin;
  return {
    page, paper: {width: page.width * across, height: page.height * up},
    window: {x: margin, y: margin, width, height: page.height - 2 * margin - below},
    block: {x: margin, y: page.height - margin - boxes.inch.height, width, height: boxes.inch.height},
  };
}

const meters = (mm: number): number => mm / 1000;

/**
 * Spreads each board over its pages. Refused as {@link tileSheet}, and 'page-too-long' {most} at `paper`; 'too-many-pages' {most, kind} counts the pages of all
 * boards.
 */
export function planTemplates(job: TemplateJob, most: number): Outcome<TemplatePlan> {
  const page = layOutPage(job);
  if (!(Math.max(page.paper.width, page.paper.height) <= longestPage)) {
    return refused({code: 'page-too-long', path: 'paper', args: {most: meters(longestPage)}});
  }
  const pages: TemplatePage[] = [];
  for (const sheet of job.sheets) {
    const tiled = tileOne(sheet, job, page.window);
    if (!tiled.ok) return tiled;
    for (const tile of tiled.value.tiling.tiles) {
      pages.push({number: pages.length + 1, sheet: tiled.value, tile, corner: {x: tile.x * 1000, y: tile.y * 1000}});
    }
    if (pages.length > most) return refused({code: 'too-many-pages', path: 'paper', args: {most, kind: 'count'}});
  }
  return good({...page, pages});
}

function tileOne({title, pieces, size}: SheetSketch, {board, paper, overlap}: TemplateJob, window: Box): Outcome<TiledSheet> {
  const {length, width} = size ?? board;
  const edge = [{x: 0, y: 0}, {x: length, y: 0}, {x: length, y: width}, {x: 0, y: width}];
  const outlines = (paper ? pieces.map(({outline}) => outline) : [edge]).map((outline) => outline.map(({x, y}) => ({x: meters(x), y: meters(y)})));
  const tiled = tileSheet({length: meters(length), width: meters(width), outlines}, {width: meters(window.width), height: meters(window.height)}, paper ? meters(overlap) : 0);
  if (!tiled.ok) return tiled;
  const tiling = tiled.value;
  return good(tiling.turned
    ? {title, tiling, length: width, width: length, pieces: pieces.map((piece) => turnedPiece(piece, width))}
    : {title, tiling, length, width, pieces});
}

/** A piece of a board that lies turned by a quarter. */
function turnedPiece(piece: PieceSketch, width: number): PieceSketch {
  const turned = ({x, y}: XY): XY => ({x: width - y, y: x});
  return {
    ...piece, outline: piece.outline.map(turned),
    lines: piece.lines.map((line) => ({...line, from: turned(line.from), to: turned(line.to)})),
    places: piece.places.map((place) => ({...place, at: turned(place.at)})),
  };
}
