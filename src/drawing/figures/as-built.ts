import {sizeFor, widthOf} from '../lettering.js';
import type {Pen, XY} from '../pen.js';
import type {View} from '../view.js';

/** A measurement in words; in the accent's colour once it was taken. */
export interface Reading {
  readonly words: string;
  readonly taken: boolean;
}

/** What is measured on a finished plane, each view in millimetres of its own: y upwards, or in plan from above with the nose up and y backwards. */
export interface AsBuiltPicture {
  /** The middle of the wing from the left, front edge at x = 0, lower corners on y = 0. */
  readonly hollow: {readonly boards: readonly (readonly XY[])[]; readonly chord: number; readonly deepest: XY; readonly reading: Reading; readonly title: string};
  /** Each half from the middle of its lower face outwards; the bench is y = 0. */
  readonly tips: {readonly left: readonly XY[]; readonly right: readonly XY[]; readonly thickness: number; readonly readings: readonly [left: Reading, right: Reading]; readonly title: string};
  /** The tailplane over the body's upper edge. */
  readonly tail: {readonly chord: number; readonly thickness: number; readonly front: number; readonly rear: number; readonly readings: readonly [front: Reading, rear: Reading]; readonly title: string};
  /** From above, x to the right of the body's line. */
  readonly plan: {
    readonly wing: readonly XY[]; readonly tail: readonly XY[]; readonly body: readonly XY[]; readonly line: readonly [XY, XY];
    readonly corners: readonly [left: XY, right: XY]; readonly tailPoint: XY;
    readonly readings: readonly [left: Reading, right: Reading]; readonly bow: Reading | undefined; readonly title: string;
  };
}

/** One view's place on the page: everything in pixels. */
interface Place { readonly x: number; readonly y: number; readonly width: number }

const titleHeight = 29, gap = 26, lettering = 12.5;

/** Four views, each to its own scale: one below another, or in two columns where there is room. */
export function drawAsBuilt(pen: Pen, widthPx: number, data: AsBuiltPicture): View {
  const width = Math.max(widthPx, 240), wide = width >= 680;
  const column = wide ? (width - 48) / 2 : width;
  const draws = [drawHollow, drawTips, drawTail] as const;
  // a dry run finds the height, since the view has to be known before anything is drawn
  const heights = draws.map((draw) => draw(undefined, {x: 0, y: 0, width: column}, data));
  const left = heights.reduce((sum, height) => sum + height + gap, -gap);
  const plan = drawPlan(undefined, {x: 0, y: 0, width: column}, data);
  const view: View = {mmPerPx: 1, box: {x: 0, y: 0, width, height: (wide ? Math.max(left, plan) : left + gap + plan) + 4}};
  pen.begin(view);
  let y = 0;
  draws.forEach((draw, i) => {
    draw(pen, {x: 0, y, width: column}, data);
    y += (heights[i] ?? 0) + gap;
  });
  drawPlan(pen, wide ? {x: column + 48, y: 0, width: column} : {x: 0, y, width: column}, data);
  pen.finish();
  return view;
}

/** Draws a view, or only tells how high it is. */
type Draw = (pen: Pen | undefined, place: Place, data: AsBuiltPicture) => number;

const title = (pen: Pen | undefined, key: string, {x, y, width}: Place, words: string): void => { pen?.text(`${key}-title`, {x: x + 1, y: y + 16}, words, {soft: true, sizePx: sizeFor(words, width - 2)}); };

const drawHollow: Draw = (pen, place, {hollow: {boards, chord, deepest, reading, title: words}}) => {
  const scale = Math.min((place.width - 40) / chord, 4.5);
  const top = Math.max(...boards.flat().map(({y}) => y));
  const left = place.x + (place.width - chord * scale) / 2, ground = place.y + titleHeight + 8 + top * scale;
  const at = ({x, y}: XY): XY => ({x: left + x * scale, y: ground - y * scale});
  title(pen, 'hollow', place, words);
  const ruler = 13, over = 14;
  if (pen) {
    pen.polygon('ruler', [{x: left - over, y: ground}, {x: left + chord * scale + over, y: ground}, {x: left + chord * scale + over, y: ground + ruler}, {x: left - over, y: ground + ruler}], 'thin', 'paper');
    for (let mm = 0; mm <= chord; mm += 10) pen.line(`tick-${String(mm)}`, {x: left + mm * scale, y: ground + ruler}, {x: left + mm * scale, y: ground + ruler - (mm % 50 ? 4 : 8)});
    boards.forEach((board, i) => { pen.polygon(`board-${String(i)}`, board.map(at), 'cut', 'board'); });
    pen.line('hollow-depth', at({x: deepest.x, y: 0}), at(deepest), 'accent');
    pen.circle('hollow-deepest', at(deepest), 2.5, 'accent', 'accent');
    // beside the gap where there is room in it, otherwise below the ruler
    pen.text('hollow-words', {x: left + deepest.x * scale, y: ground + ruler + 17}, reading.words, {anchor: 'middle', accent: reading.taken, weight: reading.taken ? 600 : 400});
  }
  return titleHeight + 8 + top * scale + ruler + 22;
};

const drawTips: Draw = (pen, place, {tips: {left, right, thickness, readings, title: words}}) => {
  const half = Math.max(...[...left, ...right].map(({x}) => Math.abs(x)), 1), top = Math.max(...[...left, ...right].map(({y}) => y)) + thickness;
  const scale = (place.width - 16) / 2 / half;
  const middle = place.x + place.width / 2, ground = place.y + titleHeight + 20 + top * scale;
  const at = ({x, y}: XY): XY => ({x: middle + x * scale, y: ground - y * scale});
  title(pen, 'tips', place, words);
  if (pen) {
    pen.line('bench', {x: place.x, y: ground}, {x: place.x + place.width, y: ground}, 'thin');
    for (let x = place.x + 4; x + 6 < place.x + place.width; x += 14) pen.line(`bench-${String(Math.round(x - place.x))}`, {x, y: ground + 6}, {x: x + 6, y: ground}, 'thin');
    [left, right].forEach((points, side) => {
      const key = side ? 'right' : 'left';
      pen.polygon(key, [...points, ...raised(points, thickness).reverse()].map(at), 'fine', 'board');
      const tip = points.at(-1) ?? {x: 0, y: 0}, reading = readings[side as 0 | 1];
      pen.line(`${key}-height`, at({x: tip.x, y: 0}), at(tip), 'accent');
      pen.text(`${key}-words`, {x: side ? place.x + place.width - 2 : place.x + 2, y: ground + 22}, reading.words,
        {anchor: side ? 'end' : 'start', accent: reading.taken, weight: reading.taken ? 600 : 400});
    });
  }
  return titleHeight + 20 + top * scale + 28;
};

/** The upper face over a lower one, square to the middle of what meets at each corner. */
function raised(points: readonly XY[], thickness: number): XY[] {
  return points.map((p, i) => {
    const before = points[i - 1] ?? p, after = points[i + 1] ?? p;
    const slope = Math.atan2(after.y - before.y, Math.abs(after.x - before.x));
    return {x: p.x - Math.sign(after.x - before.x) * thickness * Math.sin(slope), y: p.y + thickness * Math.cos(slope)};
  });
}

const drawTail: Draw = (pen, place, {tail: {chord, thickness, front, rear, readings, title: words}}) => {
  const scale = Math.min((place.width - 210) / chord, 3.2);
  // what stands high over a bench is drawn nearer to it
  const lowest = Math.min(front, rear), sunk = Math.max(lowest - 9, Math.min(lowest, 0)), rise = Math.max(front, rear) - sunk;
  const left = place.x + (place.width - chord * scale) / 2, ground = place.y + titleHeight + 8 + (rise + thickness) * scale;
  const turned = Math.asin(Math.min(Math.max((rear - front) / chord, -1), 1));
  const on = (along: number, above: number): XY => ({
    x: left + (along * Math.cos(turned) - above * Math.sin(turned)) * scale, y: ground - (front - sunk + along * Math.sin(turned) + above * Math.cos(turned)) * scale,
  });
  title(pen, 'tail', place, words);
  if (pen) {
    const depth = 12;
    pen.polygon('body-side', [{x: place.x, y: ground}, {x: place.x + place.width, y: ground}, {x: place.x + place.width, y: ground + depth}, {x: place.x, y: ground + depth}], 'none', 'hatch');
    pen.line('body-edge', {x: place.x, y: ground}, {x: place.x + place.width, y: ground}, 'cut');
    pen.polygon('tail-board', [on(0, 0), on(chord, 0), on(chord, thickness), on(0, thickness)], 'cut', 'board');
    [on(0, 0), on(chord, 0)].forEach((corner, i) => {
      const key = i ? 'tail-rear' : 'tail-front', reading = readings[i as 0 | 1];
      pen.line(`${key}-height`, {x: corner.x, y: ground}, corner, 'accent');
      pen.circle(`${key}-corner`, corner, 2.5, 'accent', 'accent');
      pen.text(`${key}-words`, {x: corner.x + (i ? 9 : -9), y: ground - 7}, reading.words, {anchor: i ? 'start' : 'end', accent: reading.taken, weight: reading.taken ? 600 : 400});
    });
  }
  return titleHeight + 8 + (rise + thickness) * scale + 14;
};

const drawPlan: Draw = (pen, place, {plan: {wing, tail, body, line, corners, tailPoint, readings, bow, title: words}}) => {
  const all = [...wing, ...tail, ...body];
  const [most, first, last] = [Math.max(...all.map(({x}) => Math.abs(x))), Math.min(...all.map(({y}) => y)), Math.max(...all.map(({y}) => y))];
  const scale = Math.min((place.width - 12) / 2 / most, 0.72);
  const middle = place.x + place.width / 2, top = place.y + titleHeight + 6;
  const at = ({x, y}: XY): XY => ({x: middle + x * scale, y: top + (y - first) * scale});
  title(pen, 'plan', place, words);
  const bottom = top + (last - first) * scale;
  if (pen) {
    pen.line('straight', at(line[0]), at(line[1]), 'mark');
    pen.polygon('plan-body', body.map(at), 'fine', 'paper');
    pen.polygon('plan-wing', wing.map(at), 'cut', 'board');
    pen.polygon('plan-tail', tail.map(at), 'cut', 'board');
    corners.forEach((corner, side) => {
      const key = side ? 'right-distance' : 'left-distance', reading = readings[side as 0 | 1];
      const a = at(corner), b = at(tailPoint);
      pen.line(key, a, b, 'accent');
      pen.circle(`${key}-corner`, a, 2.5, 'accent', 'accent');
      // along the line on its outer side, between wing and tail
      const length = Math.hypot(b.x - a.x, b.y - a.y) || 1, out = 15, outside = {x: (side ? 1 : -1) * Math.abs(b.y - a.y) / length * out, y: Math.abs(b.x - a.x) / length * out};
      const turn = Math.atan2(b.y - a.y, Math.abs(b.x - a.x)) * 180 / Math.PI * (side ? -1 : 1);
      const half = widthOf(reading.words, lettering, reading.taken) / 2 * Math.abs(b.x - a.x) / length + 4;
      // further in where the words would leave the page
      const beyond = half - (side ? place.x + place.width - a.x - outside.x : a.x + outside.x - place.x);
      const share = Math.min(Math.max(0.38, beyond / (Math.abs(b.x - a.x) || 1)), 0.7);
      pen.text(`${key}-words`, {x: a.x + (b.x - a.x) * share + outside.x, y: a.y + (b.y - a.y) * share + outside.y}, reading.words,
        {anchor: 'middle', turn, accent: reading.taken, weight: reading.taken ? 600 : 400});
    });
    pen.circle('tail-point', at(tailPoint), 3, 'accent', 'accent');
    if (bow) pen.text('bow-words', {x: middle, y: bottom + 20}, bow.words, {anchor: 'middle', accent: bow.taken, weight: bow.taken ? 600 : 400});
  }
  return bottom - place.y + (bow ? lettering + 14 : 8);
};
