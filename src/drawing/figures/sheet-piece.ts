import type {Pen, XY} from '../pen.js';
import {crosses, overlap, placeFor, type Plate, type Segment} from './fit-words.js';
import {widthOf, type LineSketch, type PieceSketch} from './sheet-layout.js';

const letterPx = 11.5;

/** Kept free around words where there is room. */
const airPx = 7;

interface Line { readonly segment: Segment; readonly mark: boolean }

const same = (a: LineSketch, b: LineSketch): boolean =>
  Math.hypot(a.from.x - b.from.x, a.from.y - b.from.y) < 1e-6 && Math.hypot(a.to.x - b.to.x, a.to.y - b.to.y) < 1e-6;

/** Lines that can be seen apart: what lies under another one is told in the cut list. */
const shownOf = (lines: readonly LineSketch[]): readonly LineSketch[] => lines.filter((line, i) =>
  !lines.some((other, k) => k !== i && same(line, other) && (other.kind !== 'mark' && line.kind === 'mark' || other.kind === line.kind && other.face === 'A' && line.face === 'B')));

/** A piece to cut out, the grooves and marks on it, and its number, name and size as far as they fit. */
export function drawPiece(pen: Pen, key: string, on: (p: XY) => XY, piece: PieceSketch, lit: boolean): void {
  const {u} = pen;
  const outline = piece.outline.map(on);
  pen.polygon(key, outline, lit ? 'accent' : 'cut', lit ? 'stack' : 'paper');
  const lines = shownOf(piece.lines).map((line) => ({...line, from: on(line.from), to: on(line.to)}));
  lines.forEach((line, i) => { drawLine(pen, `${key}-line-${String(i)}`, line); });

  const segments = lines.map(({from, to}): Segment => [from, to]);
  const taken: Plate[] = [];
  lines.forEach(({kind, face, from, to}, i) => {
    if (kind === 'mark' && face === 'A') return;
    const at = letterPlace(from, to, segments.filter((_, k) => k !== i), taken, u);
    if (!at) return;
    taken.push({...at, width: at.px * u, height: at.px * u});
    pen.circle(`${key}-face-${String(i)}`, at, at.px / 2, 'none', lit ? 'stack' : 'paper');
    pen.text(`${key}-letter-${String(i)}`, {x: at.x, y: at.y + 4.1 * u}, face, {anchor: 'middle', sizePx: letterPx, weight: 600, soft: true});
  });
  piece.places.forEach(({words, at}, i) => {
    const middle = on(at);
    const plate = fitted(middle, words, outline, segments, taken, u);
    if (!plate) return;
    taken.push(plate.box);
    pen.text(`${key}-place-${String(i)}`, plate.upright ? {x: middle.x + 4 * u, y: middle.y} : {x: middle.x, y: middle.y + 4 * u}, words, {anchor: 'middle', soft: true, sizePx: 11, turn: plate.upright ? -90 : 0});
  });
  drawName(pen, key, piece, outline, lines.map(({kind, from, to}) => ({segment: [from, to], mark: kind === 'mark'})), taken);
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

/** Where on a groove the letter of its face goes, and how much room it takes: near an end, clear of what crosses it. */
function letterPlace(from: XY, to: XY, others: readonly Segment[], taken: readonly Plate[], u: number): XY & {readonly px: number} | undefined {
  const long = Math.hypot(to.x - from.x, to.y - from.y) / u;
  if (long < 20) return undefined;
  for (const px of [14.5, 10]) {
    for (const share of [px / long, 1 - px / long, 0.25, 0.75, 0.5, 6 / long, 1 - 6 / long]) {
      const at = {x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y)};
      const plate = {...at, width: (px + 1.5) * u, height: (px + 1.5) * u};
      if (share > 0 && share < 1 && !others.some((line) => crosses(line, plate)) && !taken.some((other) => overlap(plate, other))) return {...at, px};
    }
  }
  return undefined;
}

/** A plate of words about a point, lying or upright, if it fits there. */
function fitted(at: XY, words: string, outline: readonly XY[], lines: readonly Segment[], taken: readonly Plate[], u: number): {box: Plate; upright: boolean} | undefined {
  const [long, high] = [(widthOf(words, 11) + 4) * u, 11.5 * u];
  for (const upright of [false, true]) {
    const box = {...at, width: upright ? high : long, height: upright ? long : high};
    const corners = [[-1, -1], [1, -1], [1, 1], [-1, 1]].map(([x = 0, y = 0]) => ({x: at.x + x * box.width / 2, y: at.y + y * box.height / 2}));
    const found = placeFor(corners, box.width, box.height, [...lines, ...outline.map((to, i): Segment => [outline.at(i - 1) ?? to, to])], taken);
    if (found) return {box, upright};
  }
  return undefined;
}

interface Lettering {
  readonly width: number;
  readonly height: number;
  /** Pencil marks may run under it. */
  readonly over?: boolean;
  /** Only as a reader of the page reads. */
  readonly level?: boolean;
  readonly draw: (at: XY, upright: boolean) => void;
}

/**
 * Number, name and size in two lines or in one, else number and name, else the number alone: always legible, and across a
 * line only where it cannot be helped.
 */
function drawName(pen: Pen, key: string, {number, name, size}: PieceSketch, outline: readonly XY[], lines: readonly Line[], taken: readonly Plate[]): void {
  const {u} = pen;
  const xs = outline.map(({x}) => x), ys = outline.map(({y}) => y);
  const wide = Math.max(...xs) - Math.min(...xs), high = Math.max(...ys) - Math.min(...ys);
  const title = `${String(number)} ${name}`;
  const titlePx = 12.5;
  const titled = widthOf(title, titlePx, true), sized = widthOf(size, 11);
  const ways: readonly Lettering[] = [
    {width: Math.max(titled, sized) + 4, height: 31, draw: (at, upright) => { below(pen, key, [title, size], at, upright); }},
    {width: titled + sized + 14, height: 17, draw: (at, upright) => { beside(pen, key, title, size, (titled - sized) / 2, at, upright); }},
    {width: titled + 3, height: 16, draw: (at, upright) => { below(pen, key, [title], at, upright); }},
    {width: titled + 3, height: 14, over: true, draw: (at, upright) => { below(pen, key, [title], at, upright, true); }},
    {width: widthOf(String(number), 11.5) + 3, height: 10.5, level: true, draw: (at) => { below(pen, key, [String(number)], at, false, true); }},
  ];
  for (const {width, height, over = false, level = false, draw} of ways) {
    const crossed = lines.filter(({mark}) => !(over && mark)).map(({segment}) => segment);
    for (const upright of level ? [false] : wide >= high ? [false, true] : [true, false]) {
      const [across, down] = upright ? [height, width] : [width, height];
      const at = placeFor(outline, (across + airPx) * u, (down + airPx) * u, crossed, taken) ?? placeFor(outline, across * u, down * u, crossed, taken);
      if (at) { draw(at, upright); return; }
    }
  }
  // too small for its number: told apart from its neighbours by standing in another place along it
  const along = 0.3 + 0.13 * (number % 4);
  const at = wide >= high ? {x: Math.min(...xs) + along * wide, y: (Math.min(...ys) + Math.max(...ys)) / 2} : {x: (Math.min(...xs) + Math.max(...xs)) / 2, y: Math.min(...ys) + along * high};
  below(pen, key, [String(number)], at, false, true);
}

/** Title, and under it the size. */
function below(pen: Pen, key: string, texts: readonly string[], at: XY, upright: boolean, halo = false): void {
  const {u} = pen;
  texts.forEach((words, i) => {
    const down = ((i - (texts.length - 1) / 2) * 14.5 + 4.2) * u;
    pen.text(`${key}-${String(i)}`, upright ? {x: at.x + down, y: at.y} : {x: at.x, y: at.y + down}, words,
      {anchor: 'middle', turn: upright ? -90 : 0, halo, ...(i > 0 ? {sizePx: 11, soft: true} : {sizePx: words.includes(' ') ? 12.5 : 11.5, weight: 600})});
  });
}

/** Title, and after it the size, along a strip; they meet `split` pixels off the middle. */
function beside(pen: Pen, key: string, title: string, size: string, split: number, {x, y}: XY, upright: boolean): void {
  const {u} = pen;
  const at = (along: number): XY => (upright ? {x: x + 4.2 * u, y: y - (split + along) * u} : {x: x + (split + along) * u, y: y + 4.2 * u});
  const turn = upright ? -90 : 0;
  pen.text(`${key}-0`, at(-4), title, {anchor: 'end', turn, sizePx: 12.5, weight: 600});
  pen.text(`${key}-1`, at(4), size, {turn, sizePx: 11, soft: true});
}
