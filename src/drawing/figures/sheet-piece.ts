import type {Pen, XY} from '../pen.js';
import {letteringOf, type FlatPiece, type Words} from './piece-lettering.js';
import type {LineSketch, PieceSketch} from './sheet-layout.js';

/** Lettering found already, by what a piece looks like: of forty gliders most pieces are alike. */
export type Lettered = Map<string, readonly Words[]>;

const same = (a: LineSketch, b: LineSketch): boolean =>
  Math.hypot(a.from.x - b.from.x, a.from.y - b.from.y) < 1e-6 && Math.hypot(a.to.x - b.to.x, a.to.y - b.to.y) < 1e-6;

/** Lines that can be seen apart: what lies under another one is told in the cut list. */
const shownOf = (lines: readonly LineSketch[]): readonly LineSketch[] => lines.filter((line, i) =>
  !lines.some((other, k) => k !== i && same(line, other) && (other.kind !== 'mark' && line.kind === 'mark' || other.kind === line.kind && other.face === 'A' && line.face === 'B')));

/** A piece as its lettering sees it, at so many millimetres per pixel, and where the corner of its bounds lies in the figure. */
export function flatPiece(piece: PieceSketch, on: (p: XY) => XY, mmPerPx: number): {readonly corner: XY; readonly shape: FlatPiece} {
  const outline = piece.outline.map(on);
  const corner = {x: Math.min(...outline.map(({x}) => x)), y: Math.min(...outline.map(({y}) => y))};
  const flat = ({x, y}: XY): XY => ({x: rounded((x - corner.x) / mmPerPx), y: rounded((y - corner.y) / mmPerPx)});
  return {
    corner,
    shape: {
      outline: outline.map(flat),
      lines: shownOf(piece.lines).map(({kind, face, from, to}) =>
        ({segment: [flat(on(from)), flat(on(to))], mark: kind === 'mark', letter: kind === 'mark' && face === 'A' ? undefined : face})),
      places: piece.places.map(({words, at}) => ({words, at: flat(on(at))})),
      number: piece.number, name: piece.name, size: piece.size,
    },
  };
}

/**
 * A piece to cut out, the grooves and marks on it, and its number, name and size as far as they fit: on the part of it that is `seen`, where the
 * rest lies on another page; null where too little is seen to be written on.
 */
export function drawPiece(pen: Pen, key: string, on: (p: XY) => XY, piece: PieceSketch, lit: boolean, lettered: Lettered, seen: PieceSketch | null = piece): void {
  const {u} = pen;
  pen.polygon(key, piece.outline.map(on), lit ? 'accent' : 'cut', lit ? 'stack' : 'paper');
  shownOf(piece.lines).forEach((line, i) => { drawLine(pen, `${key}-line-${String(i)}`, {...line, from: on(line.from), to: on(line.to)}); });
  if (!seen) return;
  const {corner, shape} = flatPiece(seen, on, u);
  letteringLike(shape, lettered).forEach(({words, at, anchor, upright, px, bold, soft, halo, wipePx}, i) => {
    const place = {x: corner.x + at.x * u, y: corner.y + at.y * u};
    if (wipePx !== undefined) pen.circle(`${key}-wiped-${String(i)}`, {x: place.x, y: place.y - 4.1 * u}, wipePx / 2, 'none', lit ? 'stack' : 'paper');
    pen.text(`${key}-words-${String(i)}`, place, words, {anchor, soft, halo, sizePx: px, weight: bold ? 600 : 400, turn: upright ? -90 : 0});
  });
}

const rounded = (px: number): number => Math.round(px * 1000) / 1000;

/** The lettering of a piece; where another like it was lettered already, the same with its own number. */
function letteringLike(shape: FlatPiece, lettered: Lettered): readonly Words[] {
  const digits = String(shape.number);
  const key = JSON.stringify({...shape, number: [digits.length, shape.number % 4]});
  const found = lettered.get(key) ?? letteringOf(shape);
  lettered.set(key, found);
  return found.map((words) => (words.bold && !words.soft ? {...words, words: words.words.replace(/^\d+/, digits)} : words));
}

/** A groove is a double thin line, dashed where it is on the face below; a pencil mark is a short dash. */
function drawLine(pen: Pen, key: string, {kind, face, from, to}: LineSketch): void {
  if (kind === 'mark') { pen.line(key, from, to, 'mark'); return; }
  if (face === 'A') { pen.crease(key, from, to); return; }
  const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const off = 1.6 * pen.u / long;
  const n = {x: -(to.y - from.y) * off, y: (to.x - from.x) * off};
  pen.line(`${key}-one`, {x: from.x + n.x, y: from.y + n.y}, {x: to.x + n.x, y: to.y + n.y}, 'dash');
  pen.line(`${key}-other`, {x: from.x - n.x, y: from.y - n.y}, {x: to.x - n.x, y: to.y - n.y}, 'dash');
}
