import type {Stepwise} from '../../calc/stepwise.js';
import {widthOf} from '../lettering.js';
import type {Pen, XY} from '../pen.js';
import type {View} from '../view.js';
import {grainOf} from './sheet-grain.js';
import {drawLegend} from './sheet-legend.js';
import {layOutSheets, sizeOf, type CutSketch, type SheetPicture, type SheetSketch} from './sheet-layout.js';
import {drawPin, pinOn} from './sheet-pin.js';
import {drawPiece, type Lettered} from './sheet-piece.js';
import {placeFor} from './fit-words.js';

/** How far the cut edge of the board shows, in pixels. */
const edge = 5;

/** Kept from one layout to the next, in which most pieces look as before. */
const lettered: Lettered = new Map();
const mostLettered = 1000;

/** Sheets of board from above with the parts to cut from them: outlines, grooves, marks, what is left over; sheet by sheet. */
export function* drawSheets(pen: Pen, widthPx: number, picture: SheetPicture): Stepwise<View> {
  const {view, corners, legend} = layOutSheets(picture, widthPx);
  pen.begin(view);
  if (lettered.size > mostLettered) lettered.clear();
  for (const [i, sheet] of picture.sheets.entries()) {
    const before = i > 0 ? picture.sheets[i - 1] : undefined;
    drawSheet(pen, `sheet-${String(i)}`, corners[i] ?? {x: 0, y: 0}, sheet, picture, !before || before.size !== sheet.size);
    yield;
  }
  const {cut} = picture, corner = cut && corners[cut.sheet];
  if (cut && corner) drawCut(pen, cut, ({x, y}) => ({x: corner.x + x, y: corner.y - y}));
  drawLegend(pen, legend, picture.words.legend);
  pen.finish();
  return view;
}

function drawSheet(pen: Pen, key: string, corner: XY, sheet: SheetSketch, picture: SheetPicture, measured: boolean): void {
  const {u} = pen;
  const {margin} = picture;
  const {length, width, words} = sizeOf(sheet, picture);
  const on = ({x, y}: XY): XY => ({x: corner.x + x, y: corner.y - y});
  const rectangle = (x: number, y: number, l: number, w: number): readonly XY[] =>
    [{x, y}, {x: x + l, y}, {x: x + l, y: y + w}, {x, y: y + w}].map(on);
  const [origin, right, far, left] = rectangle(0, 0, length, width);
  if (!origin || !right || !far || !left) return;

  const shifted = ({x, y}: XY): XY => ({x: x + edge * u, y: y + edge * u});
  pen.polygon(`${key}-edge`, [origin, right, far, shifted(far), shifted(right), shifted(origin)], 'thin', 'paper');
  pen.line(`${key}-edge-corner`, right, shifted(right), 'thin');
  pen.polygon(`${key}-board`, [origin, right, far, left], 'thin', 'board');
  if (picture.grain !== 'none') pen.path(`${key}-grain`, grainOf(left, right, picture.grain, 6 * u), 'grain');
  if (margin > 0) pen.polygon(`${key}-margin`, rectangle(margin, margin, length - 2 * margin, width - 2 * margin), 'mark', 'none');
  pen.text(`${key}-title`, {x: left.x, y: left.y - 9 * u}, sheet.title, {sizePx: 13, weight: 600});

  if (sheet.leftover) drawLeftover(pen, `${key}-leftover`, on, sheet.leftover);
  for (const piece of sheet.pieces) drawPiece(pen, `piece-${String(piece.number)}`, on, piece, piece.number === picture.lit, lettered);
  for (const {held, outline, number} of sheet.pieces) if (held) drawPin(pen, `piece-${String(number)}`, pinOn(outline.map(on), u));

  pen.text(`${key}-zero`, {x: origin.x - 6 * u, y: origin.y + 13 * u}, '0', {anchor: 'end', sizePx: 12.5, weight: 600});
  pen.circle(`${key}-corner`, origin, 2.4, 'none', 'line');
  if (!measured) return;
  pen.dimension(`${key}-length`, origin, right, -16, words.length, {gapPx: edge + 3});
  pen.dimension(`${key}-width`, origin, left, 10, '');
  pen.text(`${key}-width-words`, {x: origin.x - 15 * u, y: (origin.y + left.y) / 2}, words.width, {anchor: 'middle', turn: -90, halo: true});
}

/** What can be kept: a dashed line just inside its edges, with its size where there is room. */
function drawLeftover(pen: Pen, key: string, on: (p: XY) => XY, {x, y, length, width, words}: NonNullable<SheetSketch['leftover']>): void {
  const {u} = pen;
  const inset = Math.min(3 * u, length / 4, width / 4);
  const outline = [
    {x: x + inset, y: y + inset}, {x: x + length - inset, y: y + inset}, {x: x + length - inset, y: y + width - inset}, {x: x + inset, y: y + width - inset},
  ].map(on);
  pen.polygon(key, outline, 'dash', 'none');
  for (const written of words) {
    for (const upright of length >= width ? [false, true] : [true, false]) {
      const box = [widthOf(written, 12) * u + 8 * u, 16 * u] as const;
      const at = placeFor(outline, upright ? box[1] : box[0], upright ? box[0] : box[1], [], []);
      if (!at) continue;
      pen.text(`${key}-words`, upright ? {x: at.x + 4.3 * u, y: at.y} : {x: at.x, y: at.y + 4.3 * u}, written, {anchor: 'middle', soft: true, sizePx: 12, halo: 'board', turn: upright ? -90 : 0});
      return;
    }
  }
}

/** What is in hand, and the cut across it, from end to end. */
function drawCut(pen: Pen, {hand, line}: CutSketch, on: (p: XY) => XY): void {
  pen.polygon('cut-hand', hand.map(on), 'accent', 'none');
  const ends = line.map(on);
  pen.polyline('cut-line', ends, 'knife');
  ends.forEach((end, i) => { pen.circle(`cut-end-${String(i)}`, end, 3.5, 'none', 'accent'); });
}
