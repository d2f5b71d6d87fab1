import {widthOf} from '../lettering.js';
import type {XY} from '../pen.js';
import type {View} from '../view.js';

/** A line to cut into or draw on a piece. Millimetres from the sheet's lower left corner, y upwards. */
export interface LineSketch {
  readonly kind: 'crease' | 'joint' | 'mark';
  /** On the face that looks up, or on the one that lies on the bench. */
  readonly face: 'A' | 'B';
  readonly from: XY;
  readonly to: XY;
}

/** Words that belong to a place on a piece, such as where the wing sits on the body. */
export interface PlaceSketch {
  readonly words: string;
  readonly at: XY;
}

export interface PieceSketch {
  readonly number: number;
  readonly name: string;
  readonly size: string;
  readonly outline: readonly XY[];
  readonly lines: readonly LineSketch[];
  readonly places: readonly PlaceSketch[];
  /** Whether somebody holds it in its place. */
  readonly held?: boolean;
}

export interface LeftoverSketch {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
  /** What is written in it, the fullest first. */
  readonly words: readonly string[];
}

export interface SheetSketch {
  readonly title: string;
  readonly pieces: readonly PieceSketch[];
  readonly leftover: LeftoverSketch | undefined;
  /** Of this board, where it is not of the size that most are. */
  readonly size?: SheetSize | undefined;
}

/** A board's size, in millimetres, and in words. */
export interface SheetSize {
  readonly length: number;
  readonly width: number;
  readonly words: {readonly length: string; readonly width: string};
}

/** A cut to make: what is in hand, and the line of the knife. */
export interface CutSketch {
  /** Which of the sheets, from 0. */
  readonly sheet: number;
  readonly hand: readonly XY[];
  readonly line: readonly XY[];
}

/** Sheets of board with the pieces to cut from them, seen from above as they lie on the bench. */
export interface SheetPicture {
  readonly length: number;
  readonly width: number;
  readonly margin: number;
  /** Which way the grain of the board runs, if it has one. */
  readonly grain: 'none' | 'length' | 'width';
  readonly sheets: readonly SheetSketch[];
  /** The number of the piece that is pointed out. */
  readonly lit: number | undefined;
  /** The cut that is pointed out. */
  readonly cut?: CutSketch | undefined;
  readonly words: {readonly length: string; readonly width: string; readonly legend: Readonly<Record<LegendItem, string>>};
}

/** The kinds of line that the legend explains. */
export type LegendItem = 'cut' | 'above' | 'below' | 'mark' | 'grain' | 'held';

export interface SheetsLayout {
  readonly view: View;
  /** Where the lower left corner of each sheet lies in the figure, which has the sheets' own scale. */
  readonly corners: readonly XY[];
  /** Where each line of the legend that is needed begins, and what it explains. */
  readonly legend: readonly {readonly item: LegendItem; readonly at: XY}[];
}

/** Room in pixels that the lettering needs, the same at any scale. */
export const room = {left: 30, right: 8, title: 25, figure: 34, below: 16, between: 34, legendLine: 20, sample: 30, tallest: 580, narrowest: 330} as const;

/** Which lines there are to explain. */
function legendItems({sheets, grain}: SheetPicture): readonly LegendItem[] {
  const lines = sheets.flatMap(({pieces}) => pieces.flatMap((piece) => piece.lines));
  const grooves = lines.filter(({kind}) => kind !== 'mark');
  return [
    'cut',
    ...grooves.some(({face}) => face === 'A') ? ['above'] as const : [],
    ...grooves.some(({face}) => face === 'B') ? ['below'] as const : [],
    ...lines.some(({kind}) => kind === 'mark') ? ['mark'] as const : [],
    ...grain === 'none' ? [] : ['grain'] as const,
    ...sheets.some(({pieces}) => pieces.some(({held}) => held)) ? ['held'] as const : [],
  ];
}

/** The size of one of the sheets. */
export const sizeOf = ({size}: SheetSketch, {length, width, words}: SheetPicture): SheetSize => size ?? {length, width, words};

/** Sheets side by side as far as they stay readable, all to one scale, and the legend below them. */
export function layOutSheets(picture: SheetPicture, widthPx: number): SheetsLayout {
  const {sheets, words} = picture;
  const sizes = sheets.map((sheet) => sizeOf(sheet, picture));
  const length = Math.max(...sizes.map((size) => size.length)), width = Math.max(...sizes.map((size) => size.width));
  const inner = Math.max(widthPx - room.left - room.right, 60);
  const columns = Math.max(1, Math.min(sheets.length, Math.floor((inner + room.between) / (room.narrowest + room.between))));
  const across = Math.min((inner - (columns - 1) * room.between) / columns, room.tallest * length / width);
  const u = length / across;
  let bottom = 0;
  const corners: XY[] = [];
  for (let first = 0; first < sheets.length; first += columns) {
    const row = sizes.slice(first, first + columns);
    bottom += room.title + Math.max(...row.map((size) => size.width)) / u + (first === 0 ? 0 : first === columns ? room.figure : room.below);
    const below = bottom * u;
    row.forEach((_, column) => { corners.push({x: (room.left + column * (across + room.between)) * u, y: below}); });
  }
  bottom += sheets.length <= columns ? room.figure : room.below;

  let x: number = room.left, line = bottom + 16;
  const legend = legendItems(picture).map((item) => {
    const needed = room.sample + 8 + widthOf(words.legend[item], 11.5) + 22;
    if (x > room.left && x + needed > widthPx) { x = room.left; line += room.legendLine; }
    const at = {x: x * u, y: line * u};
    x += needed;
    return {item, at};
  });
  return {
    corners, legend,
    view: {mmPerPx: u, box: {x: 0, y: 0, width: widthPx * u, height: (line + 8) * u}},
  };
}
