import type {Pen, XY} from '../pen.js';
import {mmPerPx, ontoPage, ownArea} from './draw-board.js';
import type {Area} from './fragment.js';
import type {TemplateWords} from './job.js';
import {codeOf, type TemplatePage, type TemplatePlan} from './plan.js';

/** Registration marks are circles so large, with a cross through them. */
const radius = 2.2;

/** How far words stand off a trim line, and how tall small letters are. */
const off = 1.1, tall = 2;

interface Side {
  readonly key: 'left' | 'right' | 'above' | 'below';
  /** Towards the neighbour, y upwards. */
  readonly out: XY;
  /** Whether this page is trimmed here and lies over its neighbour, or is lain over. */
  readonly over: boolean;
  readonly edge: (area: Area) => number;
}

const sides: readonly Side[] = [
  {key: 'left', out: {x: -1, y: 0}, over: true, edge: ({left}) => left}, {key: 'above', out: {x: 0, y: 1}, over: true, edge: ({high}) => high},
  {key: 'right', out: {x: 1, y: 0}, over: false, edge: ({right}) => right}, {key: 'below', out: {x: 0, y: -1}, over: false, edge: ({low}) => low},
];

/**
 * The trim lines of a page, each in the middle of what it shows together with a neighbour, and the registration marks on them. A mark is printed on
 * both pages: the half that is left of it on the one that is trimmed meets the other half on the other.
 */
export function drawTrim(pen: Pen, plan: TemplatePlan, page: TemplatePage, words: TemplateWords): void {
  for (const side of sides) {
    if (page.tile.neighbours[side.key]) drawSide(pen, plan, page, side, words);
  }
}

function drawSide(pen: Pen, plan: TemplatePlan, page: TemplatePage, {key, out, over, edge}: Side, words: TemplateWords): void {
  const {tile, sheet, corner} = page;
  const upright = out.y === 0;
  const line = edge(ownArea(plan, page));
  const begin = upright ? corner.y : corner.x;
  const end = begin + (upright ? plan.window.height : plan.window.width);
  const on = ontoPage(plan, page);
  /** A point along the trim line, and so far off it to one side. */
  const at = (along: number, side: XY, away: number): XY => on(upright ? {x: line + side.x * away, y: along} : {x: along, y: line + side.y * away});
  const inwards = {x: -out.x, y: -out.y};

  pen.line(`trim-${key}`, at(begin, out, 0), at(end, out, 0), 'dash');
  const half = sheet.tiling.overlap * 1000 / 2;
  const other = codeOf({column: tile.column + out.x, row: tile.row - out.y});
  for (const [i, along] of marksAlong(begin + half, end - half).entries()) {
    drawMark(pen, `mark-${key}-${String(i)}`, at(along, out, 0));
    for (const [code, side] of [[codeOf(tile), inwards], [other, out]] as const) {
      const place = upright ? at(along - tall / 2, side, radius + off) : at(along + radius + off, side, standing(side));
      pen.text(`mark-${key}-${String(i)}-${code}`, place, code, {anchor: side.x < 0 ? 'end' : 'start', sizePx: 11, weight: 600, halo: true});
    }
  }
  pen.text(`trim-${key}-words`, at((begin + end) / 2, out, standing(out)), over ? words.trim(other) : words.under(other), {anchor: 'middle', soft: true, sizePx: 11, turn: upright ? -90 : 0, halo: true});
}

/** How far off a line words stand on one side of it: letters rise from what they stand on, and sideways ones to the left. */
const standing = (side: XY): number => off + (side.x < 0 || side.y > 0 ? 0 : tall);

/** Two marks along what two pages show together, clear of its middle; one where it is short. */
const marksAlong = (from: number, to: number): readonly number[] =>
  (to - from < 50 ? [from + 0.3 * (to - from)] : [from + 0.2 * (to - from), to - 0.2 * (to - from)]);

function drawMark(pen: Pen, key: string, at: XY): void {
  const arm = radius + 0.8;
  pen.circle(`${key}-disc`, at, radius / mmPerPx, 'thin', 'paper');
  pen.line(`${key}-level`, {x: at.x - arm, y: at.y}, {x: at.x + arm, y: at.y}, 'thin');
  pen.line(`${key}-upright`, {x: at.x, y: at.y - arm}, {x: at.x, y: at.y + arm}, 'thin');
}
