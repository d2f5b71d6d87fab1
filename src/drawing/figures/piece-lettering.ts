import type {XY} from '../pen.js';
import {widthOf} from '../lettering.js';
import {crosses, overlap, placeFor, type Plate, type Segment} from './fit-words.js';

/** A piece as it lies in the figure, y downwards, measured in pixels from the upper left corner of its bounds. */
export interface FlatPiece {
  readonly outline: readonly XY[];
  readonly lines: readonly {readonly segment: Segment; readonly mark: boolean; readonly letter: string | undefined}[];
  readonly places: readonly {readonly words: string; readonly at: XY}[];
  readonly number: number;
  readonly name: string;
  readonly size: string;
}

/** A few words in their place, in pixels; upright words read from the right. */
export interface Words {
  readonly words: string;
  readonly at: XY;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly upright: boolean;
  readonly px: number;
  readonly bold: boolean;
  readonly soft: boolean;
  readonly halo: boolean;
  /** The line under the letter of a face is wiped out this wide. */
  readonly wipePx?: number;
}

/** Kept free around words where there is room. */
const airPx = 7;

/** Half the height of small letters: from the middle of a line of words to what it stands on. */
const drop = 4.2;

/** Everything that is written on a piece: the letters of its grooves' faces, what sits where, its number, name and size. */
export function letteringOf(piece: FlatPiece): readonly Words[] {
  const {outline, lines} = piece;
  const taken: Plate[] = [];
  const faces = lines.flatMap(({segment, letter}, i): Words[] => {
    const others = lines.filter((_, k) => k !== i).map((line) => line.segment);
    const found = letter === undefined ? undefined : placeOn(segment, others, taken);
    if (letter === undefined || !found) return [];
    const {at, px} = found;
    taken.push({...at, width: px, height: px});
    return [{words: letter, at: {x: at.x, y: at.y + 4.1}, anchor: 'middle', upright: false, px: 11.5, bold: true, soft: true, halo: false, wipePx: px}];
  });
  const segments = lines.map(({segment}) => segment);
  const places = piece.places.flatMap(({words, at}): Words[] => {
    const found = placeAt(at, widthOf(words, 11) + 4, 11.5, outline, segments, taken);
    if (!found) return [];
    taken.push(found.plate);
    const {upright} = found;
    return [{words, at: upright ? {x: at.x + 4, y: at.y} : {x: at.x, y: at.y + 4}, anchor: 'middle', upright, px: 11, bold: false, soft: true, halo: false}];
  });
  return [...faces, ...places, ...titleOf(piece, taken)];
}

/** Where on a groove the letter of its face goes, and how much room it takes: near an end, clear of what crosses it. */
function placeOn([from, to]: Segment, others: readonly Segment[], taken: readonly Plate[]): {readonly at: XY; readonly px: number} | undefined {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  if (long < 20) return undefined;
  for (const px of [14.5, 10]) {
    for (const share of [px / long, 1 - px / long, 0.25, 0.75, 0.5, 6 / long, 1 - 6 / long]) {
      const at = {x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y)};
      const plate = {...at, width: px + 1.5, height: px + 1.5};
      if (share > 0 && share < 1 && !others.some((line) => crosses(line, plate)) && !taken.some((other) => overlap(plate, other))) return {at, px};
    }
  }
  return undefined;
}

/** Room for words about a point, lying or upright, if there is any. */
function placeAt(at: XY, long: number, high: number, outline: readonly XY[], lines: readonly Segment[], taken: readonly Plate[]): {readonly plate: Plate; readonly upright: boolean} | undefined {
  const edges = outline.map((to, i): Segment => [outline.at(i - 1) ?? to, to]);
  for (const upright of [false, true]) {
    const plate = {...at, width: upright ? high : long, height: upright ? long : high};
    if (![...edges, ...lines].some((line) => crosses(line, plate)) && !taken.some((other) => overlap(plate, other))) return {plate, upright};
  }
  return undefined;
}

interface Way {
  readonly width: number;
  readonly height: number;
  /** Pencil marks may run under it. */
  readonly over?: boolean;
  /** Only as a reader of the page reads. */
  readonly level?: boolean;
  readonly words: (at: XY, upright: boolean) => readonly Words[];
}

/**
 * Number, name and size in two lines or in one, else number and name, else the number alone: always legible, and across a
 * line only where it cannot be helped.
 */
function titleOf({number, name, size, outline, lines}: FlatPiece, taken: readonly Plate[]): readonly Words[] {
  const xs = outline.map(({x}) => x), ys = outline.map(({y}) => y);
  const wide = Math.max(...xs), high = Math.max(...ys);
  const only = String(number), title = `${only} ${name}`;
  const titled = widthOf(title, 12.5, true), sized = widthOf(size, 11);
  const ways: readonly Way[] = [
    {width: Math.max(titled, sized) + 4, height: 31, words: (at, upright) => stacked([title, size], at, upright)},
    {width: titled + sized + 14, height: 17, words: (at, upright) => inARow(title, size, (titled - sized) / 2, at, upright)},
    {width: titled + 3, height: 16, words: (at, upright) => stacked([title], at, upright)},
    {width: titled + 3, height: 14, over: true, words: (at, upright) => stacked([title], at, upright, true)},
    {width: widthOf(only, 11.5) + 3, height: 10.5, level: true, words: (at) => stacked([only], at, false, true)},
  ];
  for (const {width, height, over = false, level = false, words} of ways) {
    const crossed = lines.filter(({mark}) => !(over && mark)).map(({segment}) => segment);
    for (const upright of level ? [false] : wide >= high ? [false, true] : [true, false]) {
      const [across, down] = upright ? [height, width] : [width, height];
      const at = placeFor(outline, across + airPx, down + airPx, crossed, taken) ?? placeFor(outline, across, down, crossed, taken);
      if (at) return words(at, upright);
    }
  }
  // too small for its number: told apart from its neighbours by standing in another place along it
  const along = 0.3 + 0.13 * (number % 4);
  return stacked([only], wide >= high ? {x: along * wide, y: high / 2} : {x: wide / 2, y: along * high}, false, true);
}

/** Title, and under it the size. */
const stacked = (texts: readonly string[], at: XY, upright: boolean, halo = false): readonly Words[] => texts.map((words, i) => {
  const down = (i - (texts.length - 1) / 2) * 14.5 + drop;
  return {
    words, at: upright ? {x: at.x + down, y: at.y} : {x: at.x, y: at.y + down}, anchor: 'middle', upright, halo,
    px: i > 0 ? 11 : words.includes(' ') ? 12.5 : 11.5, bold: i === 0, soft: i > 0,
  };
});

/** Title, and after it the size, along a strip; they meet `split` pixels off the middle. */
function inARow(title: string, size: string, split: number, {x, y}: XY, upright: boolean): readonly Words[] {
  const at = (along: number): XY => (upright ? {x: x + drop, y: y - split - along} : {x: x + split + along, y: y + drop});
  return [
    {words: title, at: at(-4), anchor: 'end', upright, px: 12.5, bold: true, soft: false, halo: false},
    {words: size, at: at(4), anchor: 'start', upright, px: 11, bold: false, soft: true, halo: false},
  ];
}
