import {letteringOf} from './figures/piece-lettering.js';
import type {SheetSketch} from './figures/sheet-layout.js';
import {flatPiece} from './figures/sheet-piece.js';
import type {XY} from './pen.js';

/** What the lines of a cutting file are for. Lines on face B are drawn where they lie as seen from above, through the board. */
export const layers = ['cut', 'crease-A', 'crease-B', 'mark-A', 'mark-B', 'names', 'board'] as const;
export type Layer = (typeof layers)[number];

/** A line to follow with a knife or a pencil, open or closed. */
export interface LayerPath {
  readonly layer: Exclude<Layer, 'names'>;
  readonly points: readonly XY[];
  readonly closed: boolean;
}

/** A few words, by the point of the line they stand on. */
export interface LayerText {
  readonly at: XY;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Read from the right. */
  readonly upright: boolean;
  readonly size: number;
  readonly words: string;
}

/** One drawing of everything to cut: millimetres, y upwards from the lower edge of the boards. */
export interface LayeredSheets {
  readonly length: number;
  readonly width: number;
  readonly paths: readonly LayerPath[];
  readonly texts: readonly LayerText[];
}

/** Between boards that lie side by side. */
const apart = 20;

/** Letters of 3 mm. */
const mmPerPx = 0.25;

/** The lines of some boards and what is written on them, the boards side by side from left to right. */
export function layeredSheets(board: {readonly length: number; readonly width: number}, sheets: readonly SheetSketch[]): LayeredSheets {
  const paths: LayerPath[] = [];
  const texts: LayerText[] = [];
  let left = 0, high = 0;
  for (const {pieces, size} of sheets) {
    const {length, width} = size ?? board;
    const start = left;
    left += length + apart;
    high = Math.max(high, width);
    const on = ({x, y}: XY): XY => ({x: x + start, y});
    paths.push({layer: 'board', closed: true, points: [{x: 0, y: 0}, {x: length, y: 0}, {x: length, y: width}, {x: 0, y: width}].map(on)});
    for (const piece of pieces) {
      paths.push({layer: 'cut', closed: true, points: piece.outline.map(on)});
      paths.push(...piece.lines.map(({kind, face, from, to}): LayerPath =>
        ({layer: kind === 'mark' ? `mark-${face}` : `crease-${face}`, closed: false, points: [on(from), on(to)]})));
      const {corner, shape} = flatPiece(piece, (p) => ({x: on(p).x, y: -on(p).y}), mmPerPx);
      texts.push(...letteringOf(shape).map(({words, at, anchor, upright, px}): LayerText =>
        ({words, anchor, upright, size: px * mmPerPx, at: {x: corner.x + at.x * mmPerPx, y: -(corner.y + at.y * mmPerPx)}})));
    }
  }
  return {length: Math.max(0, left - apart), width: high, paths, texts};
}
