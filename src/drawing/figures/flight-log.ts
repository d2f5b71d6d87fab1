import {widthOf} from '../lettering.js';
import type {Pen} from '../pen.js';
import type {View} from '../view.js';

/** One throw on the scale. */
export interface ThrowDot { readonly value: number; readonly out: boolean }

/** The throws of one version. */
export interface ThrowLane {
  /** What it is called, from long to short: the first that has room is written. */
  readonly names: readonly string[];
  readonly mean: string | undefined;
  readonly dots: readonly ThrowDot[];
  readonly average: number | undefined;
  readonly interval: {readonly from: number; readonly to: number} | undefined;
  readonly band: {readonly from: number; readonly to: number} | undefined;
}

export interface ThrowsPicture {
  readonly lanes: readonly ThrowLane[];
  readonly scale: {readonly from: number; readonly to: number; readonly ticks: readonly {readonly at: number; readonly words: string}[]};
  readonly legend: {readonly mean: string; readonly interval: string; readonly band: string; readonly out: string};
}

const side = 14;
const titleHeight = 24;
const mostStack = 58;
const laneGap = 20;

/** A round scale for some values: from nought where that does not waste most of the width. */
export function scaleFor(values: readonly number[], fromNought: boolean, mostTicks: number): {readonly from: number; readonly to: number; readonly step: number} {
  let least = Infinity, most = -Infinity;
  for (const value of values) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  if (!(most >= least)) [least, most] = [0, 1];
  if (fromNought || least < 0.5 * most) least = Math.min(0, least);
  const raw = Math.max(most - least, Math.abs(most) * 0.02, 1e-6) / Math.max(mostTicks, 1);
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = power * (raw <= power ? 1 : raw <= 2 * power ? 2 : raw <= 5 * power ? 5 : 10);
  const from = Math.floor(least / step + 1e-9) * step;
  return {from, to: Math.max(Math.ceil(most / step - 1e-9) * step, from + step), step};
}

/** Every throw as a dot, stacked where many are alike, one lane for each version on one scale; in pixels. Nothing is hidden: dots of thousands overlap. */
export function drawThrows(pen: Pen, widthPx: number, {lanes, scale, legend}: ThrowsPicture): View {
  const width = Math.max(widthPx, 200);
  const x = (value: number): number => side + (width - 2 * side) * (value - scale.from) / (scale.to - scale.from);
  const stacks = lanes.map((lane) => stackDots(lane.dots, x));
  const heights = stacks.map(({height}) => titleHeight + height + 10);
  const axis = heights.reduce((sum, height) => sum + height + laneGap, 0);
  const rows = legendRows(lanes, legend, width);
  const tops = rows.map((_, i) => rows.slice(0, i).reduce((sum, row) => sum + rowHeight(row), axis + 26));
  const height = axis + 26 + rows.reduce((sum, row) => sum + rowHeight(row), 0);
  const view: View = {box: {x: 0, y: 0, width, height}, mmPerPx: 1};
  pen.begin(view);
  drawScale(pen, scale.ticks, x, axis);
  let top = 0;
  lanes.forEach((lane, i) => {
    const stack = stacks[i];
    if (!stack) return;
    const floor = top + titleHeight + stack.height;
    drawLane(pen, String(i), lane, stack, floor, x, width);
    top += (heights[i] ?? 0) + laneGap;
  });
  pen.line('axis', {x: side, y: axis}, {x: width - side, y: axis}, 'fine');
  rows.forEach((row, i) => { drawLegend(pen, row, (tops[i] ?? 0) + 12); });
  pen.finish();
  return view;
}

/** Every mark has its line; the last has its letters, with the unit, and of the others those that have room. */
function drawScale(pen: Pen, ticks: ThrowsPicture['scale']['ticks'], x: (value: number) => number, axis: number): void {
  const last = ticks.length - 1;
  const room = widthOf(ticks[last]?.words ?? '', 12);
  let free = 0;
  ticks.forEach(({at, words}, i) => {
    pen.line(`grid-${String(i)}`, {x: x(at), y: titleHeight}, {x: x(at), y: axis + 4}, 'mark');
    const half = widthOf(words, 12) / 2;
    const [from, to] = i === 0 ? [x(at), x(at) + 2 * half] : [x(at) - half, x(at) + half];
    if (i < last && (from < free || to + 6 > x(ticks[last]?.at ?? 0) - room)) return;
    free = to + 6;
    pen.text(`tick-${String(i)}`, {x: x(at), y: axis + 18}, words, {anchor: i === 0 ? 'start' : i === last ? 'end' : 'middle', soft: true, sizePx: 12});
  });
}

interface Stack {
  readonly radius: number;
  readonly height: number;
  readonly dots: readonly {readonly x: number; readonly up: number; readonly out: boolean}[];
}

function stackDots(dots: readonly ThrowDot[], x: (value: number) => number): Stack {
  const radius = dots.length > 2000 ? 1.6 : dots.length > 200 ? 2.6 : 4;
  const columns = new Map<number, number>();
  const placed = dots.map(({value, out}) => {
    const column = Math.round(x(value) / (2 * radius + 1));
    const level = columns.get(column) ?? 0;
    columns.set(column, level + 1);
    return {x: x(value), level, out};
  });
  const tallest = Math.max(1, ...columns.values());
  const step = tallest > 1 ? Math.min(2 * radius + 0.5, (mostStack - 2 * radius) / (tallest - 1)) : 0;
  return {radius, height: 2 * radius + step * (tallest - 1) + 2, dots: placed.map(({x: at, level, out}) => ({x: at, up: radius + 1 + level * step, out}))};
}

const rounded = (n: number): string => String(Math.round(n * 10) / 10);

/** All dots in one path: ten thousand nodes would be slow. */
const dotPath = (dots: Stack['dots'], radius: number, floor: number): string => dots.map(({x, up}) =>
  `M${rounded(x - radius)} ${rounded(floor - up)}a${String(radius)} ${String(radius)} 0 1 0 ${String(2 * radius)} 0a${String(radius)} ${String(radius)} 0 1 0 ${String(-2 * radius)} 0Z`).join('');

function drawLane(pen: Pen, key: string, lane: ThrowLane, {radius, height, dots}: Stack, floor: number, x: (value: number) => number, width: number): void {
  const {band, interval, average} = lane;
  if (band) {
    const [from, to] = [x(band.from), x(band.to)].map((at) => Math.min(Math.max(at, 0), width)) as [number, number];
    pen.polygon(`band-${key}`, [{x: from, y: floor - height}, {x: to, y: floor - height}, {x: to, y: floor}, {x: from, y: floor}], 'none', 'hatch');
  }
  pen.line(`floor-${key}`, {x: side, y: floor}, {x: width - side, y: floor}, 'thin');
  const kept = dots.filter(({out}) => !out), out = dots.filter((dot) => dot.out);
  if (kept.length > 0) pen.path(`dots-${key}`, dotPath(kept, radius, floor), 'none', 'line');
  if (out.length > 0) pen.path(`out-${key}`, dotPath(out, radius - 0.6, floor), 'fine', 'paper');
  if (interval) {
    const [from, to] = [Math.max(x(interval.from), 2), Math.min(x(interval.to), width - 2)];
    pen.path(`interval-${key}`, bracket(from, to, floor + 6), 'cut');
  }
  if (average !== undefined) pen.line(`average-${key}`, {x: x(average), y: floor - height - 3}, {x: x(average), y: floor + 11}, 'cut');
  const room = width - 2 * side - widthOf(lane.mean ?? '') - 12;
  const name = lane.names.find((one) => widthOf(one, 12.5, true) <= room) ?? lane.names.at(-1) ?? '';
  pen.text(`name-${key}`, {x: side, y: floor - height - 7}, name, {weight: 600, halo: true});
  if (lane.mean !== undefined) pen.text(`mean-${key}`, {x: width - side, y: floor - height - 7}, lane.mean, {anchor: 'end', halo: true});
}

const bracket = (from: number, to: number, y: number): string =>
  `M${rounded(from)} ${rounded(y - 3)}V${rounded(y + 3)}M${rounded(from)} ${rounded(y)}H${rounded(to)}M${rounded(to)} ${rounded(y - 3)}V${rounded(y + 3)}`;

type Sign = keyof ThrowsPicture['legend'];
interface LegendItem { readonly sign: Sign; readonly words: readonly string[]; readonly x: number }

/** The signs that are used, in rows as wide as the picture. */
function legendRows(lanes: readonly ThrowLane[], legend: ThrowsPicture['legend'], width: number): LegendItem[][] {
  const used: Record<Sign, boolean> = {
    mean: lanes.some(({average}) => average !== undefined), interval: lanes.some(({interval}) => interval),
    band: lanes.some(({band}) => band), out: lanes.some(({dots}) => dots.some(({out}) => out)),
  };
  const rows: LegendItem[][] = [];
  let x = Infinity;
  for (const sign of ['mean', 'interval', 'band', 'out'] as const) {
    if (!used[sign]) continue;
    const words = inLines(legend[sign], width - side - 26);
    const wide = 28 + Math.max(...words.map((line) => widthOf(line, 12))) + 14;
    if (x + wide > width) {
      rows.push([]);
      x = side;
    }
    rows.at(-1)?.push({sign, words, x});
    x += wide;
  }
  return rows;
}

const rowHeight = (row: readonly LegendItem[]): number => 20 + 15 * (Math.max(...row.map(({words}) => words.length)) - 1);

/** Words in lines of so many pixels, parted between words. */
function inLines(words: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, 12) <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

function drawLegend(pen: Pen, items: readonly LegendItem[], y: number): void {
  for (const {sign, words, x} of items) {
    const middle = y - 4;
    const key = `legend-${sign}`;
    if (sign === 'mean') pen.line(key, {x: x + 10, y: middle - 7}, {x: x + 10, y: middle + 7}, 'cut');
    else if (sign === 'interval') pen.path(key, bracket(x, x + 20, middle), 'cut');
    else if (sign === 'band') pen.polygon(key, [{x, y: middle - 6}, {x: x + 20, y: middle - 6}, {x: x + 20, y: middle + 6}, {x, y: middle + 6}], 'none', 'hatch');
    else pen.circle(key, {x: x + 10, y: middle}, 3.4, 'fine', 'paper');
    words.forEach((line, i) => { pen.text(`${key}-words-${String(i)}`, {x: x + 26, y: y + 15 * i}, line, {soft: true, sizePx: 12}); });
  }
}
