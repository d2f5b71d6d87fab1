import {widthOf} from '../lettering.js';
import type {Pen, TextOptions, XY} from '../pen.js';
import type {Box} from '../view.js';
import {mmPerPx} from './draw-board.js';
import {drawMap} from './draw-map.js';
import type {TemplateJob} from './job.js';
import {boxes, codeOf, type TemplatePage, type TemplatePlan} from './plan.js';

/** Between the parts of the block. */
const gap = 6;

/** How much of the room beside the boxes the map may take. */
const mapShare = 0.42;

/** The letters of the file are narrower than those that a page may be set in. */
const narrow = 0.84;

/** The block at the foot of a page: two boxes to measure, what the page belongs to, and the map of the pages. */
export function drawBlock(pen: Pen, plan: TemplatePlan, page: TemplatePage, {words}: TemplateJob): void {
  const {block, pages} = plan;
  drawBoxes(pen, {x: block.x, y: block.y + block.height}, words);
  const right = {x: block.x + boxes.inch.width + gap, y: block.y, width: block.width - boxes.inch.width - gap, height: block.height};
  const {tiling} = page.sheet;
  const several = tiling.tiles.length > 1;
  const map = several ? drawMap(pen, plan, page, {...right, x: right.x + right.width * (1 - mapShare), width: right.width * mapShare}) : 0;

  const code = several ? codeOf(page.tile) : undefined;
  const lines: Paragraph[] = [
    {words: words.title, options: {sizePx: 15, weight: 600}},
    {words: page.sheet.title, options: {sizePx: 12}},
    ...words.facts.map((fact) => ({words: fact, options: {sizePx: 11, soft: true}})),
  ];
  const last: Paragraph[] = [
    {words: words.page({page: page.number, pages: pages.length, code}), options: {sizePx: 12.5, weight: 600}},
  ];
  const column = {...right, width: right.width - (map > 0 ? map + gap : 0)};
  const foot = wrapped(last, column.width);
  const footHeight = foot.reduce((sum, line) => sum + pitch(line), 0);
  setLines(pen, 'last', foot, {...column, y: column.y + column.height - footHeight, height: footHeight});
  setLines(pen, 'first', wrapped(lines, column.width), {...column, height: column.height - footHeight});
}

interface Paragraph {
  readonly words: string;
  readonly options: TextOptions & {readonly sizePx: number};
}

const pitch = ({options: {sizePx}}: Paragraph): number => sizePx * 1.3 * mmPerPx;

/** Broken into lines that fit a width in mm. */
const wrapped = (paragraphs: readonly Paragraph[], width: number): readonly Paragraph[] => paragraphs.flatMap(({words, options}) => {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1) ?? ''} ${word}` : word;
    if (lines.length > 0 && widthOf(longer, options.sizePx, options.weight === 600) * narrow * mmPerPx <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.map((line) => ({words: line, options}));
});

/** Line under line as far as there is room. */
function setLines(pen: Pen, key: string, lines: readonly Paragraph[], {x, y, height}: Box): void {
  let down = 0;
  lines.forEach((line, i) => {
    down += pitch(line);
    if (down <= height + 0.1) pen.text(`${key}-${String(i)}`, {x, y: y + down - 0.25 * pitch(line)}, line.words, line.options);
  });
}

/** A box in millimetres and a box in inches from one lower left corner, for a ruler of either kind. */
function drawBoxes(pen: Pen, corner: XY, {measure: {heading, lines}, corrected}: TemplateJob['words']): void {
  const {metric, inch} = boxes;
  for (const [key, {width, height}] of [['inch', inch], ['metric', metric]] as const) {
    pen.polygon(`box-${key}`, [corner, {x: corner.x + width, y: corner.y}, {x: corner.x + width, y: corner.y - height}, {x: corner.x, y: corner.y - height}], 'thin', 'none');
  }
  const size = {sizePx: 11, weight: 600, anchor: 'middle'} as const;
  const top = corner.y - metric.height;
  pen.text('box-100', {x: corner.x + metric.width / 2, y: corner.y - 1.6}, '100 mm', size);
  pen.text('box-50', {x: corner.x + 3.4, y: corner.y - metric.height / 2}, '50 mm', {...size, turn: -90});
  pen.text('box-4', {x: corner.x + inch.width / 2, y: corner.y - inch.height - 1.2}, '4 in', size);
  pen.text('box-2', {x: corner.x + inch.width + 3.2, y: corner.y - inch.height / 2}, '2 in', {...size, turn: -90});
  const said = wrapped([
    {words: heading, options: {sizePx: 14, weight: 600}},
    ...lines.map((words) => ({words, options: {sizePx: 11.5}})),
    ...corrected === undefined ? [] : [{words: corrected, options: {sizePx: 11.5, weight: 600}}],
  ], metric.width - 16);
  setLines(pen, 'box-words', said, {x: corner.x + 9, y: top + 6, width: metric.width - 16, height: metric.height - 12});
}
