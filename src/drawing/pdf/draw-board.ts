import {drawPiece, type Lettered} from '../figures/sheet-piece.js';
import {widthOf} from '../lettering.js';
import type {Pen, XY} from '../pen.js';
import {fragmentOf, type Area} from './fragment.js';
import type {TemplatePage, TemplatePlan} from './plan.js';

/** Millimetres on paper for what a screen would show as one pixel: lines of 0.4 mm, letters of 3 mm. */
export const mmPerPx = 0.25;

/** Kept free of lettering beside a trim line, for the registration marks. */
const beside = 4;

/** From the board to the page: millimetres from the page's upper left corner. */
export const ontoPage = ({window}: TemplatePlan, {corner}: TemplatePage) => ({x, y}: XY): XY =>
  ({x: window.x + x - corner.x, y: window.y + window.height - (y - corner.y)});

/** What a page has to itself, between its trim lines, in millimetres of the board; with its edges moved inwards where it has neighbours. */
export function ownArea({window}: TemplatePlan, {corner, sheet, tile: {neighbours}}: TemplatePage, inwards = 0): Area {
  const trim = sheet.tiling.overlap * 1000 / 2 + inwards;
  return {
    left: corner.x + (neighbours.left ? trim : 0), right: corner.x + window.width - (neighbours.right ? trim : 0),
    low: corner.y + (neighbours.below ? trim : 0), high: corner.y + window.height - (neighbours.above ? trim : 0),
  };
}

/** What a page shows of its board: the edges of the board and the parts to cut, each lettered on every page it reaches. */
export function drawBoard(pen: Pen, plan: TemplatePlan, page: TemplatePage, words: {readonly boardEdge: string}): void {
  const {sheet, corner} = page;
  const {window} = plan;
  pen.begin({box: window, mmPerPx});
  const on = ontoPage(plan, page);
  const {length, width} = sheet;
  pen.polygon('board', [{x: 0, y: 0}, {x: length, y: 0}, {x: length, y: width}, {x: 0, y: width}].map(on), 'thin', 'none');

  const lettered: Lettered = new Map();
  const own = ownArea(plan, page, beside);
  for (const piece of sheet.pieces) {
    const xs = piece.outline.map(({x}) => x), ys = piece.outline.map(({y}) => y);
    const apart = Math.max(...xs) < corner.x - 1 || Math.min(...xs) > corner.x + window.width + 1
      || Math.max(...ys) < corner.y - 1 || Math.min(...ys) > corner.y + window.height + 1;
    if (!apart) drawPiece(pen, `piece-${String(piece.number)}`, on, piece, false, lettered, fragmentOf(piece, own));
  }
  nameEdges(pen, on, page, own, words.boardEdge);
  pen.finish();
}

/** The edges of the board are no lines to cut: each that can be seen is named once, outside the board. */
function nameEdges(pen: Pen, on: (p: XY) => XY, {sheet: {length, width}}: TemplatePage, {left, right, low, high}: Area, words: string): void {
  const needed = widthOf(words, 11) * mmPerPx;
  const [x0, x1, y0, y1] = [Math.max(left, 0), Math.min(right, length), Math.max(low, 0), Math.min(high, width)];
  const off = 1.4;
  if (x1 - x0 > needed) {
    if (high > width + 4) pen.text('edge-top', on({x: x1, y: width + off}), words, {anchor: 'end', soft: true, sizePx: 11});
    if (low < -4) pen.text('edge-bottom', on({x: x1, y: -off - 2.6}), words, {anchor: 'end', soft: true, sizePx: 11});
  }
  if (y1 - y0 > needed) {
    if (right > length + 4) pen.text('edge-right', on({x: length + off + 2.2, y: y1}), words, {anchor: 'end', soft: true, sizePx: 11, turn: -90});
    if (left < -4) pen.text('edge-left', on({x: -off, y: y1}), words, {anchor: 'end', soft: true, sizePx: 11, turn: -90});
  }
}
